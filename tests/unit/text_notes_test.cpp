// What the field notes say, in plain sentences.
#include "core/site/field_tests.h"
#include "ui/text/notes_words.h"

#include <QLocale>

#include <catch2/catch.hpp>

namespace words = ui::words;

namespace {

using core::BallTest;
using core::Grit;
using core::Project;
using core::Soil;

const ui::Formatter kMetric(QLocale("en_GB"));
const ui::Formatter kFeet(QLocale("en_US"), ui::UnitSystem::feet_inches);

QString all(const QStringList& sentences) {
  return sentences.join(u'\n').replace(QChar(QChar::Nbsp), u' ');
}

core::Plan planned(const Project& project) {
  auto plan = core::plan(project);
  REQUIRE(plan.has_value());
  return std::move(*plan);
}

Project noted() {
  Project p;
  p.site.clay_percent = 12;
  p.notes.jars = {{"upper terrace", 50, 32, 18}, {"", 40, 43, 17}, {"", 30, 50, 20}};
  p.notes.feel = {{"upper terrace", BallTest::holds, 15, Grit::even}};
  p.notes.pit_layers = {{"A", 0, 0.8, Soil::firm_loam, false}, {"A", 0.8, 1.2, Soil::sandy, true}};
  p.notes.slope = {{10, 1.2}, {8, 0.96}};
  return p;
}

}  // namespace

TEST_CASE("nothing noted yet: each page says what to do") {
  const Project p;
  const core::Plan plan = planned(p);
  CHECK(all(words::notesAnswers(p, plan, kMetric)).startsWith("Nothing noted yet."));
  CHECK(all(words::jarAnswers(plan, kMetric)).startsWith("No jar read yet."));
  CHECK(all(words::feelAnswers(plan, kMetric)).startsWith("No soil felt yet."));
  CHECK(all(words::pitAnswers(plan, kMetric)).contains("A pit can cave in"));
  CHECK(all(words::slopeAnswers(p, plan, kMetric)).startsWith("No slope taken yet."));
}

TEST_CASE("field notes are told in short, with what they would change") {
  const Project p = noted();
  const QString text = all(words::notesAnswers(p, planned(p), kMetric));
  INFO(text.toStdString());
  CHECK(text.contains("The jars show 18 % clay in the middle of 3."));
  CHECK(text.contains("upper terrace: loam by ball and ribbon."));
  CHECK(text.contains("is: sandy."));
  CHECK(text.contains("The deepest test pit ends at 1.20 m"));
  CHECK(text.contains("Water came in at 0.80 m below the ground"));
  CHECK(text.contains("The slope falls 12.0 % over 18.0 m."));
  CHECK(text.contains("Putting the notes in place would change:"));
  CHECK(text.contains("18 % in place of 12 %."));
  CHECK(text.contains("sandy in place of not entered."));
  CHECK(text.contains("even slope in place of level."));
  const Project after = core::site::adopted(p);
  const QString then = all(words::notesAnswers(after, planned(after), kMetric));
  CHECK(then.contains("The notes change nothing of what is entered for the site."));
  CHECK(all(words::notesAnswers(p, planned(p), kFeet)).contains("over 59' "));  // 18 m
}

TEST_CASE("each jar, sample and setting is told by its place or row") {
  const Project p = noted();
  const core::Plan plan = planned(p);
  const QString jars = all(words::jarAnswers(plan, kMetric));
  INFO(jars.toStdString());
  CHECK(jars.contains("upper terrace: 50 % sand, 32 % silt, 18 % clay; texture: loam."));
  CHECK(jars.contains("Jar 3: 30 % sand, 50 % silt, 20 % clay; texture: silt loam."));
  CHECK(jars.contains("not of the weight"));
  CHECK(all(words::slopeAnswers(p, plan, kMetric)).contains("Setting 2: 12.0 %."));
}

TEST_CASE("clay, layers without a soil and a line walked uphill are told with what to do") {
  Project p = noted();
  p.notes.feel = {{"", BallTest::holds, 60, Grit::even}};
  p.notes.pit_layers[0].soil.reset();
  p.notes.pit_layers[1].has_water = false;
  p.notes.slope = {{10, -1}};
  const core::Plan plan = planned(p);
  CHECK(all(words::feelAnswers(plan, kMetric)).contains("Sample 1: clay by ball and ribbon."));
  CHECK(all(words::feelAnswers(plan, kMetric)).contains("dig a test pit"));
  CHECK(all(words::pitAnswers(plan, kMetric)).contains("Layers without a soil: 1."));
  CHECK(all(words::pitAnswers(plan, kMetric)).contains("No water came in down to 1.20 m."));
  CHECK(all(words::slopeAnswers(p, plan, kMetric)).startsWith("The ground rises 10.0 % over 10.0 m"));
  p.notes.pit_layers[1].soil.reset();
  CHECK(all(words::pitAnswers(planned(p), kMetric)).startsWith("No layer down to the floor of the pit"));
  p.notes.slope = {{10, 0}};
  CHECK(all(words::slopeAnswers(p, planned(p), kMetric)).startsWith("The ground has no fall over 10.0 m."));
}

TEST_CASE("every texture has a name of its own") {
  QStringList names;
  for (std::size_t k = 0; k < core::site::textureTokens().size(); ++k)
    names << words::textureName(static_cast<core::site::Texture>(k));
  CHECK(names.removeDuplicates() == 0);
  CHECK_FALSE(names.contains(QString()));
}
