// The table of the short form against the field table, and how single values are written and read.
#include "core/exchange/short_form_fields.h"

#include "core/exchange/short_form_text.h"

#include <algorithm>
#include <set>
#include <string>
#include <string_view>

#include <catch2/catch.hpp>

using core::field;
using core::FieldKind;
using core::FieldValue;
using namespace core::exchange;

namespace {

bool isCapital(char c) {
  return c >= 'A' && c <= 'Z';
}

bool isInTable(std::string_view id) {
  return std::ranges::find(kShortFields, id, &ShortField::id) != kShortFields.end();
}

/// What a design in short form is to hold of the field table.
bool isToBeCovered(std::string_view id) {
  static const std::set<std::string_view> alone{"site.soil",
                                                "site.clay_percent",
                                                "site.latitude_deg",
                                                "site.elevation_m",
                                                "site.ground.kind",
                                                "site.ground.fall_percent",
                                                "site.ground.downhill_azimuth_deg",
                                                "site.position.turn_deg",
                                                "works.start_date"};
  if (id.starts_with("lining.customary_bill.")) return false;
  return alone.contains(id) || id.starts_with("tank.") || id.starts_with("lining.") ||
         id.starts_with("site.platform.");
}

}  // namespace

TEST_CASE(
    "tokens of the short form are one or two capitals, each given once, none like a digit after the first") {
  std::set<std::string_view> seen{kVersionToken, kCornerToken};
  for (const ShortField& item : kShortFields) {
    if (item.token == kSamePart) continue;
    INFO(item.token);
    CHECK(seen.insert(item.token).second);
    CHECK((item.token.size() == 1 || item.token.size() == 2));
    CHECK(std::ranges::all_of(item.token, isCapital));
    CHECK(tokenOf(std::string(item.token) + "7.2") == item.token);
    CHECK(tokenOf(std::string(item.token) + "O.5") == item.token);
    CHECK(tokenOf(std::string(item.token) + "L5") == item.token);
    CHECK(tokenOf(std::string(item.token) + ":RE") == item.token);
  }
}

TEST_CASE(
    "every entry of the short form is a field once, of a kind that it can write, and not null as made") {
  std::set<std::string_view> seen;
  for (const ShortField& item : kShortFields) {
    INFO(item.id);
    CHECK(seen.insert(item.id).second);
    const core::Field& f = field(item.id);  // throws when there is no such field
    CHECK((f.kind == FieldKind::number || f.kind == FieldKind::whole || f.kind == FieldKind::choice ||
           f.kind == FieldKind::date));
    const bool is_null = std::holds_alternative<std::monostate>(f.get(core::Project{}, 0));
    CHECK(is_null == f.nullable);  // then absent as made, so that absent needs no token
  }
}

TEST_CASE("values that share a part are of one list, and of all its fields") {
  for (std::size_t k = 0; k < kShortFields.size(); ++k) {
    const core::List* const list = core::listOf(field(kShortFields[k].id));
    INFO(kShortFields[k].id);
    if (kShortFields[k].token == kSamePart) {
      REQUIRE(k > 0);
      CHECK(list == core::listOf(field(kShortFields[k - 1].id)));
      REQUIRE(list != nullptr);
    } else if (list) {
      const auto of_list = [list](const core::Field& f) { return core::listOf(f) == list; };
      const auto count = std::ranges::count_if(core::fields(), of_list);
      CHECK(shortFieldsOf(kShortFields[k].token).size() == static_cast<std::size_t>(count));
    }
  }
}

TEST_CASE("the short form covers tank, lining, platform and what it says of the site, and nothing else") {
  for (const core::Field& f : core::fields()) {
    INFO(f.id);
    CHECK(isInTable(f.id) == isToBeCovered(f.id));
  }
}

TEST_CASE("choices are written with letters that read back, and none has a blank, digit or sign in it") {
  for (const ShortField& item : kShortFields) {
    const core::Field& f = field(item.id);
    for (const std::string_view choice : f.choices) {
      const std::string text = shortValue(f, std::string(choice));
      INFO(item.id << " " << choice << " " << text);
      CHECK(valueOfShort(f, text) == FieldValue(std::string(choice)));
      CHECK(text.size() >= 3);
      CHECK(text.front() == ':');
      CHECK(std::all_of(text.begin() + 1, text.end(), isCapital));
    }
  }
}

TEST_CASE("letters that several choices or none begin with are refused, whole words are taken") {
  const core::Field& shape = field("tank.shape");
  CHECK(valueOfShort(shape, ":P") == FieldValue(std::string("polygon")));
  CHECK(valueOfShort(shape, ":ROUND") == FieldValue(std::string("round")));
  for (const char* text : {":R", ":", ":X", ":ROUNDS", "RE", "", "7"}) {
    INFO(text);
    const core::Problems problems = core::checkValue(shape, 0, valueOfShort(shape, text));
    REQUIRE(problems.size() == 1);
    CHECK(problems[0].code == "unknown_choice");
    CHECK(problems[0].allowed == "rectangle|round|polygon");
  }
}

TEST_CASE("numbers are plain decimals with the fewest digits that read back") {
  CHECK(shortNumber(7.2) == "7.2");
  CHECK(shortNumber(0.1 + 0.2) == "0.30000000000000004");
  CHECK(shortNumber(1440) == "1440");
  CHECK(shortNumber(-0.0635) == "-0.0635");
  CHECK(shortNumber(-0.0) == "0");
  CHECK(shortNumber(1e-7) == "0.0000001");
  for (const double value : {7.2, 1.0 / 3, 1e-7, 5e-324, -89.99999999999999, 1e22})
    CHECK(numberOfShort(shortNumber(value)) == FieldValue(value));
  for (const char* text : {"", "7..2", "7.2.1", "+7", "7E2", "7-2", "-", ".", "7.2 ", ":7"}) {
    INFO(text);
    CHECK(numberOfShort(text) == FieldValue(std::string(text)));
  }
}

// CRC RevEng catalogue of parametrised CRC algorithms, CRC-16/IBM-3740 (alias CRC-16/CCITT-FALSE): check
// 0x29b1
TEST_CASE("the check group is that of the catalogue") {
  CHECK(crc16("123456789") == 0x29B1);
  CHECK(checkGroup("123456789") == "29B1");
  CHECK(crc16("") == 0xFFFF);
  CHECK(checkGroup("") == "FFFF");
}
