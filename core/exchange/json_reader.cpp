#include "core/exchange/json_reader.h"

#include "core/exchange/utf8.h"
#include "core/project/fields.h"

#include <algorithm>
#include <cstdint>
#include <optional>
#include <unordered_set>
#include <vector>

#include <fmt/format.h>

namespace core::exchange {
namespace {

using std::string_view;

Problem fileProblem(string_view code, std::string value) {
  Problem problem;
  problem.code = code;
  problem.value = std::move(value);
  return problem;
}

/// Walks a JSON text without keeping it and notes what the tree builder would not: depth, repeated keys,
/// numbers too large.
class Scan : public nlohmann::json_sax<Json> {
public:
  explicit Scan(string_view text) : text_(text) {}

  Problems take() { return std::move(problems_); }

  bool null() override { return value(); }
  bool boolean(bool) override { return value(); }
  bool number_integer(std::int64_t) override { return value(); }
  bool number_unsigned(std::uint64_t) override { return value(); }
  bool number_float(double, const std::string&) override { return value(); }
  bool string(std::string&) override { return value(); }
  bool binary(binary_t&) override { return value(); }
  bool start_object(std::size_t) override { return open(true); }
  bool end_object() override { return close(); }
  bool start_array(std::size_t) override { return open(false); }
  bool end_array() override { return close(); }

  bool key(std::string& name) override {
    Level& level = levels_.back();
    level.key = name;
    if (!level.seen.insert(name).second) add("duplicate_key", path(), shortened(name));
    if (level.seen.size() > kMostKeys) return tooManyKeys();
    return problems_.size() < kMostProblems;
  }

  bool parse_error(std::size_t position, const std::string& token,
                   const nlohmann::json::exception& error) override {
    constexpr int kNumberOverflow = 406;  // nlohmann::json::out_of_range
    for (const string_view word : {"NaN", "-Infinity", "Infinity"}) {
      if (startsBefore(position, word)) return add("not_finite", path(), std::string(word));
    }
    if (error.id == kNumberOverflow) return add("not_finite", path(), shortened(token));
    return add("not_json", path(), placeOf(text_, std::max<std::size_t>(position, 1) - 1));
  }

private:
  struct Level {
    bool is_object = false;
    std::size_t index = 0;  // of the element that comes next, in a list
    std::string key;        // of the value that comes next, in an object
    std::unordered_set<std::string> seen = {};
  };
  static constexpr std::size_t kMostProblems = 100;

  bool value() {
    if (!levels_.empty()) ++levels_.back().index;
    return true;
  }

  bool open(bool is_object) {
    if (levels_.size() == kMostDepth) {
      Problem problem = fileProblem("too_deep", "");
      problem.most = static_cast<double>(kMostDepth);
      problems_.push_back(problem);
      return false;
    }
    levels_.push_back({.is_object = is_object, .index = 0, .key = {}});
    return true;
  }

  bool close() {
    levels_.pop_back();
    return value();
  }

  bool add(string_view code, std::string path, std::string value) {
    Problem problem = fileProblem(code, std::move(value));
    problem.path = std::move(path);
    problems_.push_back(std::move(problem));
    return false;
  }

  bool tooManyKeys() {
    levels_.pop_back();
    add("too_many", path(), std::to_string(kMostKeys + 1));
    problems_.back().most = static_cast<double>(kMostKeys);
    return false;
  }

  /// True when the parser stopped at `position` within the first two characters of `word`.
  bool startsBefore(std::size_t position, string_view word) const {
    const std::size_t back = word.front() == '-' ? 2 : 1;
    return position >= back && position <= text_.size() && text_.substr(position - back).starts_with(word);
  }

  std::string path() const {
    std::string out;
    for (const Level& level : levels_) {
      if (!level.is_object) {
        out += fmt::format("[{}]", level.index);
      } else if (!level.key.empty()) {
        if (!out.empty()) out += '.';
        out += shortened(level.key);
      }
    }
    return out;
  }

  string_view text_;
  std::vector<Level> levels_;
  Problems problems_;
};

}  // namespace

tl::expected<Json, Problems> parseJson(string_view text) {
  if (text.size() > kMostBytes) {
    Problem problem = fileProblem("too_large", std::to_string(text.size()));
    problem.most = static_cast<double>(kMostBytes);
    return tl::unexpected(Problems{problem});
  }
  if (const auto bad = notUtf8At(text)) {
    return tl::unexpected(Problems{fileProblem("not_utf8", placeOf(text, *bad))});
  }
  Scan scan(text);
  Json::sax_parse(text, &scan);
  if (Problems problems = scan.take(); !problems.empty()) return tl::unexpected(std::move(problems));
  Json json = Json::parse(text, nullptr, false);
  if (json.is_discarded()) return tl::unexpected(Problems{fileProblem("not_json", "1:1")});
  return json;
}

std::string dottedPath(const Json::json_pointer& pointer) {
  std::vector<std::string> parts;
  for (auto rest = pointer; !rest.empty(); rest.pop_back()) parts.push_back(rest.back());
  std::string out;
  for (auto part = parts.rbegin(); part != parts.rend(); ++part) {
    const bool is_row = !part->empty() &&
                        std::all_of(part->begin(), part->end(), [](char c) { return c >= '0' && c <= '9'; });
    if (is_row) {
      out += fmt::format("[{}]", *part);
    } else {
      out += (out.empty() ? "" : ".") + shortened(*part);
    }
  }
  return out;
}

}  // namespace core::exchange
