#include "core/exchange/project_file.h"
#include "core/plan.h"
#include "tests/support/random_project.h"
#include "tests/support/temporary_folder.h"

#include <algorithm>
#include <array>
#include <set>
#include <string>
#include <string_view>

#include <catch2/catch.hpp>

namespace {

bool isKnown(const std::string& code) {
  const auto codes = core::problemCodes();
  return std::find(codes.begin(), codes.end(), code) != codes.end();
}

constexpr std::array<std::string_view, 22> kPieces = {"null",    "true",  "-1",   "0",
                                                      "1e308",   "1e999", "-0",   "NaN",
                                                      "\"\"",    "[]",    "{}",   "[[0,0],[1,0],[0,1]]",
                                                      ",",       ":",     "\"",   "\\",
                                                      "{\"a\":", "[[[[",  "\xff", "\xf0\x9f\x92\xa7",
                                                      "\\ud800", "1e-400"};

std::size_t place(support::Random& random, const std::string& text) {
  return static_cast<std::size_t>(random.whole(0, static_cast<int>(text.size()) - 1));
}

/// Length of the number or word at `at`, for replacing it as a whole.
std::size_t wordLength(const std::string& text, std::size_t at) {
  const std::size_t end = text.find_first_of(",:\n {}[]", at);
  return (end == std::string::npos ? text.size() : end) - at;
}

void mutate(support::Random& random, std::string& text) {
  if (text.empty()) text = "{";
  const std::size_t at = place(random, text);
  const std::string_view piece =
      kPieces[static_cast<std::size_t>(random.whole(0, static_cast<int>(kPieces.size()) - 1))];
  switch (random.whole(0, 6)) {
    case 0:
      text[at] = static_cast<char>(random.whole(0, 255));
      break;
    case 1:
      text[at] = static_cast<char>(text[at] ^ (1 << random.whole(0, 7)));
      break;
    case 2:
      text.insert(at, piece);
      break;
    case 3:
      text.erase(at, static_cast<std::size_t>(random.whole(1, 40)));
      break;
    case 4:
      text.insert(place(random, text), text.substr(at, static_cast<std::size_t>(random.whole(1, 200))));
      break;
    case 5:
      text.replace(at, wordLength(text, at), piece);
      break;
    default:
      if (random.chance(0.1)) text.resize(at);
      break;
  }
}

struct Tally {
  int read = 0;
  std::set<std::string> codes = {};
};

void tryText(const std::string& text, Tally& tally) {
  const auto result = core::exchange::parseProject(text);
  if (!result) {
    REQUIRE_FALSE(result.error().empty());
    for (const core::Problem& problem : result.error()) {
      INFO(problem.code);
      REQUIRE(isKnown(problem.code));
      tally.codes.insert(problem.code);
    }
    return;
  }
  ++tally.read;
  const std::string written = core::exchange::projectText(result->project);
  const auto again = core::exchange::parseProject(written);
  REQUIRE(again.has_value());
  REQUIRE(again->project == result->project);
  REQUIRE(core::plan(result->project).has_value());
}

}  // namespace

TEST_CASE("5,000 mutations of the demo projects are read and written whole or refused with a known code") {
  support::Random random(77);
  Tally tally;
  const std::array<std::string, 3> demos = {
      support::bytesOf(TANKWRIGHT_SOURCE_DIR "/resources/demo/terrace.tankwright"),
      support::bytesOf(TANKWRIGHT_SOURCE_DIR "/resources/demo/round.tankwright"),
      support::bytesOf(TANKWRIGHT_SOURCE_DIR "/resources/demo/five_sided.tankwright")};
  for (int k = 0; k < 5000; ++k) {
    INFO("mutation " << k);
    std::string text = demos[static_cast<std::size_t>(k) % demos.size()];
    for (int times = random.whole(1, 3); times > 0; --times) mutate(random, text);
    CAPTURE(text);
    tryText(text, tally);
  }
  CHECK(tally.read > 200);
  CHECK(tally.codes.size() >= 10);
}
