#include "ui/text/notes_words.h"
#include "ui/text/words.h"
#include "ui/text/worth.h"

#include <QCoreApplication>
#include <string>

namespace ui::words {
namespace {

using core::Unit;
using core::site::FieldTests;
using core::site::PitSoils;

QString say(const char* text) {
  return QCoreApplication::translate("ui::words", text);
}

QString percent(double value, const Formatter& format, int decimals = 0) {
  return format.quantity(value, Unit::percent, decimals);
}

QString metres(double value, const Formatter& format) {
  return format.quantity(value, Unit::metre, 2);
}

QString soilName(core::Soil soil) {
  return choiceLabel("site.soil", core::field("site.soil").choices[std::size_t(soil)]);
}

/// The place of a sample, or the number of its row where none was written down.
QString sampleName(const std::string& place, std::size_t row, const char* numbered, const Formatter& format) {
  return place.empty() ? say(numbered).arg(format.integer(int(row) + 1)) : fromCore(place);
}

QString jarLine(const core::site::JarReading& jar, const Formatter& format) {
  return say(QT_TRANSLATE_NOOP("ui::words", "%1: %2 sand, %3 silt, %4 clay; texture: %5."))
      .arg(sampleName(jar.place, jar.row, QT_TRANSLATE_NOOP("ui::words", "Jar %1"), format),
           percent(jar.shares.sand_percent, format), percent(jar.shares.silt_percent, format),
           percent(jar.shares.clay_percent, format), textureName(jar.texture));
}

QString clayText(const FieldTests& tests, const Formatter& format) {
  const int count = int(tests.jars.size());
  const QString clay = percent(*tests.clay_percent, format);
  if (count == 1) return say(QT_TRANSLATE_NOOP("ui::words", "The jar shows %1 clay.")).arg(clay);
  return say(QT_TRANSLATE_NOOP("ui::words", "The jars show %1 clay in the middle of %2."))
      .arg(clay, format.integer(count));
}

QString feelLine(const core::site::FeelReading& feel, const Formatter& format) {
  return say(QT_TRANSLATE_NOOP("ui::words", "%1: %2 by ball and ribbon."))
      .arg(sampleName(feel.place, feel.row, QT_TRANSLATE_NOOP("ui::words", "Sample %1"), format),
           textureName(feel.texture));
}

/// What the samples stand for, and what they leave open.
QString textureMeaning(const FieldTests& tests) {
  if (tests.texture_soil)
    return say(QT_TRANSLATE_NOOP("ui::words", "For digging this program takes such soil as: %1."))
        .arg(soilName(*tests.texture_soil));
  return say(QT_TRANSLATE_NOOP(
      "ui::words",
      "There is clay or clay loam. The hand does not tell whether it is stiff: dig a test pit, press a thumb "
      "into its wall, and write down what the layer is."));
}

QString pitSoilLine(const PitSoils& pits, const FieldTests& tests, const Formatter& format) {
  if (!pits.weakest)
    return say(QT_TRANSLATE_NOOP("ui::words",
                                 "No layer down to the floor of the pit (%1) has its soil written down."))
        .arg(metres(tests.pit_depth_m, format));
  return say(QT_TRANSLATE_NOOP("ui::words", "The weakest soil down to the floor of the pit (%1) is: %2."))
      .arg(metres(tests.pit_depth_m, format), soilName(*pits.weakest));
}

QString waterLine(const FieldTests& tests, const Formatter& format) {
  if (!tests.water_depth_m)
    return say(QT_TRANSLATE_NOOP("ui::words",
                                 "No water came in down to %1. Look again after the rains, or ask how high "
                                 "the nearest well stands then."))
        .arg(metres(tests.pits->down_to_m, format));
  return say(QT_TRANSLATE_NOOP("ui::words",
                               "Water came in at %1 below the ground, and it may stand higher after the "
                               "rains."))
      .arg(metres(toShownStep(*tests.water_depth_m, Unit::metre, 2, format, Rounding::down), format));
}

QString fallText(const FieldTests& tests, const Formatter& format) {
  const QString run = format.quantity(tests.run_m, Unit::metre, 1);
  if (tests.drop_m == 0)
    return say(QT_TRANSLATE_NOOP("ui::words", "The ground has no fall over %1.")).arg(run);
  if (tests.drop_m < 0)
    return say(QT_TRANSLATE_NOOP("ui::words",
                                 "The ground rises %1 over %2: the line was walked uphill. Walk it straight "
                                 "down the fall, or turn the signs of the drops."))
        .arg(percent(-*tests.fall_percent, format, 1), run);
  return say(QT_TRANSLATE_NOOP("ui::words", "The slope falls %1 over %2."))
      .arg(percent(*tests.fall_percent, format, 1), run);
}

}  // namespace

QStringList jarAnswers(const core::Plan& plan, const Formatter& format) {
  const FieldTests& tests = plan.field_tests;
  if (tests.jars.empty())
    return {say(QT_TRANSLATE_NOOP("ui::words",
                                  "No jar read yet. Fill a straight jar a third with soil, the rest with "
                                  "water and a pinch of salt, shake it long, put it down, and measure the "
                                  "layers when they have settled."))};
  QStringList answers{clayText(tests, format)};
  for (const auto& jar : tests.jars) answers << jarLine(jar, format);
  answers << say(QT_TRANSLATE_NOOP("ui::words",
                                   "These are shares of the height, not of the weight: clay settles loosely, "
                                   "so by weight there is less of it."));
  return answers;
}

QStringList feelAnswers(const core::Plan& plan, const Formatter& format) {
  const FieldTests& tests = plan.field_tests;
  if (tests.feel.empty())
    return {say(QT_TRANSLATE_NOOP("ui::words",
                                  "No soil felt yet. Knead a moist handful, squeeze it to a ball, push it to "
                                  "a ribbon, and write down what happens."))};
  QStringList answers;
  for (const auto& feel : tests.feel) answers << feelLine(feel, format);
  answers << textureMeaning(tests);
  return answers;
}

QStringList pitAnswers(const core::Plan& plan, const Formatter& format) {
  const FieldTests& tests = plan.field_tests;
  if (!tests.pits)
    return {say(QT_TRANSLATE_NOOP("ui::words",
                                  "No test pit yet. Dig one beside the tank as deep as its pit (%1), and "
                                  "write down each layer and where water comes in. A pit can cave in: step "
                                  "its sides back, and never work in it alone."))
                .arg(metres(tests.pit_depth_m, format))};
  const PitSoils& pits = *tests.pits;
  QStringList answers{pitSoilLine(pits, tests, format)};
  if (pits.weakest && pits.unknown > 0)
    answers << say(QT_TRANSLATE_NOOP("ui::words",
                                     "Layers without a soil: %1. Until they are known the pits do not count "
                                     "for the soil of the site."))
                   .arg(format.integer(pits.unknown));
  if (pits.down_to_m < tests.pit_depth_m)
    answers << say(QT_TRANSLATE_NOOP("ui::words",
                                     "The deepest test pit ends at %1, above the floor of the tank's pit: "
                                     "what lies below is not known."))
                   .arg(metres(pits.down_to_m, format));
  answers << waterLine(tests, format);
  return answers;
}

QStringList slopeAnswers(const core::Project& project, const core::Plan& plan, const Formatter& format) {
  const FieldTests& tests = plan.field_tests;
  if (!tests.fall_percent)
    return {say(QT_TRANSLATE_NOOP("ui::words",
                                  "No slope taken yet. Hold a hose full of water along the fall, measure the "
                                  "level distance and both water marks, and go on from the lower staff."))};
  QStringList answers{fallText(tests, format)};
  for (const auto& setting : tests.slope)
    answers << say(QT_TRANSLATE_NOOP("ui::words", "Setting %1: %2."))
                   .arg(format.integer(int(setting.row) + 1), percent(setting.fall_percent, format, 1));
  if (project.site.ground.kind == core::GroundKind::spot_heights)
    answers << say(QT_TRANSLATE_NOOP("ui::words",
                                     "The ground was surveyed; its spot heights stay in place of this "
                                     "fall."));
  return answers;
}

}  // namespace ui::words
