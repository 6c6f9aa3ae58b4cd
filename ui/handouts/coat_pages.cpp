#include "ui/drawings/drawings.h"
#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet_parts.h"
#include "ui/handouts/stage_pictures.h"
#include "ui/handouts/steps.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <algorithm>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

using core::Unit;
using core::lining::Batch;
using core::lining::CoatQuantities;
using Rows = std::vector<std::vector<Cell>>;

constexpr double kPipes_mm = 190, kHeading_mm = 14;
constexpr double kLeastPicture_mm = 38, kMostPicture_mm = 50;

/// Whether a coat lies against the earth, or is the one that the water touches.
struct Place {
  bool is_first, is_last;
};

Place placeOf(const CoatQuantities& coat, const core::Plan& plan) {
  return {coat.coat == 1, coat.coat == static_cast<int>(plan.quantities.coats.size())};
}

/// A number of people, and how many are needed where they are too few.
QString people(int planned, int needed, const Formatter& format) {
  if (planned >= needed) return format.integer(planned);
  return Text::tr("%1, TOO FEW: %2 needed").arg(format.integer(planned), format.integer(needed));
}

struct Fact {
  QString what, answer;
};

void addPeople(std::vector<Fact>& facts, const Content& content, int coat) {
  if (!content.plan.works) return;
  const auto& format = content.format;
  for (const auto& check : content.plan.works->coat_checks) {
    if (check.coat != coat) continue;
    facts.push_back({Text::tr("People planned on it"), people(check.people, check.needed, format)});
    facts.push_back({Text::tr("Masons among them"), people(check.masons, check.masons_needed, format)});
    facts.push_back({Text::tr("Put on within"), format.quantity(check.hours, Unit::hour, 1)});
    facts.push_back({Text::tr("Sacks to cover it"), format.integer(check.sacks)});
  }
}

std::vector<Fact> factsOf(const Content& content, const CoatQuantities& coat) {
  const auto& [project, plan, format] = content;
  std::vector<Fact> facts;
  const auto whole = std::ranges::find_if(plan.quantities.batches,
                                          [&](const Batch& b) { return b.coat == coat.coat && b.bags == 1; });
  if (whole != plan.quantities.batches.end())
    facts.push_back({Text::tr("Batches with a whole bag"), format.integer(whole->count)});
  addPeople(facts, content, coat.coat);
  const core::Coat& mix = project.lining.coats.at(static_cast<std::size_t>(coat.coat - 1));
  facts.push_back({Text::tr("Days under wet sacks"), format.integer(mix.cure_days)});
  return facts;
}

/// What is known of the coat, two facts in a row.
void addNumbers(Sheet& sheet, const Content& content, const CoatQuantities& coat) {
  Rows rows;
  for (const Fact& fact : factsOf(content, coat)) {
    if (rows.empty() || rows.back().size() == 4) rows.emplace_back();
    rows.back().emplace_back(fact.what);
    rows.back().emplace_back(fact.answer);
    rows.back().back().strong = true;
  }
  while (rows.back().size() < 4) rows.back().emplace_back(QString());
  sheet.table({{Text::tr("This coat"), 0.31}, {QString(), 0.19}, {QString(), 0.31}, {QString(), 0.19}}, rows);
}

void addPictures(Sheet& sheet, const Content& content, int coat, double high_mm) {
  std::vector<StagePicture> pictures;
  for (const char* stage : {"coat_%1", "cure_%1"}) {
    const std::string id = QString::fromLatin1(stage).arg(coat).toStdString();
    pictures.push_back({builtAt(content, id), {words::stageName(id)}});
  }
  addStagePictures(sheet, content, pictures, 2, high_mm);
}

Step groundStep(const Place& place) {
  if (place.is_first)
    return {{"sprinkle"},
            Text::tr("Wet the earth walls and the stone bed until they are dark but no water stands on them. "
                     "Dry earth drinks the plaster's water."),
            true};
  return {
      {"sprinkle"},
      Text::tr("The coat below is roughened and free of dust. Wet it until it is dark but no water stands on "
               "it."),
      true};
}

Step finishStep(const Place& place) {
  if (!place.is_last)
    return {
        {"float"},
        Text::tr("Rub it even with the wooden float, then scratch it crosswise so that the next coat holds."),
        true};
  return {{"float"},
          Text::tr("Rub it smooth and dense with the float while it is still fresh; no cracks, no pits."),
          true};
}

/// How walls and floor meet: rounded with the last coat when there is a cove.
QString jointText(const Place& place, const Content& content) {
  const double radius_m = content.project.lining.cove_radius_m;
  if (!place.is_last || radius_m <= 0)
    return Text::tr("Press walls and floor into one another where they meet: no joint.");
  return Text::tr("Round off the corner of wall and floor with a radius of %1: no joint.")
      .arg(drawings::thicknessText(radius_m, content.format));
}

Step placingStep(const Place& place, const Content& content, double thickness_m) {
  return {
      {"plaster_wall", "plaster_floor"},
      Text::tr("Begin early and finish in one go. Walls first, from the foot upward, all round, pressed on "
               "hard, %1 thick by a marked nail; then the floor, backing out to the ladder.")
              .arg(drawings::thicknessText(thickness_m, content.format)) +
          QLatin1Char(' ') + jointText(place, content),
      true};
}

void addWork(Sheet& sheet, const Content& content, const CoatQuantities& coat) {
  const Place place = placeOf(coat, content.plan);
  addSteps(sheet,
           {cementStep(),
            groundStep(place),
            placingStep(place, content, coat.thickness_m),
            finishStep(place),
            {{"sun_shade", "no_rain", "no_frost"},
             Text::tr("Keep shade over the fresh coat. None is put on in rain, or when frost is to come.")},
            {{"wet_sacks"},
             Text::tr("Wet sacks over all of it as soon as it takes no thumb print, within the hour in "
                      "sun or wind. Keep them wet by the wetting calendar."),
             true}});
}

void addCoat(Sheet& sheet, const Content& content, const CoatQuantities& coat) {
  Sheet page({sheet.width(), sheet.height()}), below({sheet.width(), sheet.height()});
  page.heading(Text::tr("Coat %1: %2 thick on %3")
                   .arg(content.format.integer(coat.coat),
                        drawings::thicknessText(coat.thickness_m, content.format),
                        content.format.quantity(coat.face_m2, Unit::square_metre, 1)));
  addNumbers(below, content, coat);
  addWork(below, content, coat);
  const double left = page.height() - page.used() - below.used();
  // where words leave no room, the sheet of stages has the pictures
  if (left >= kLeastPicture_mm) addPictures(page, content, coat.coat, std::min(left, kMostPicture_mm));
  append(sheet, page);
  append(sheet, below);
}

/// Which pipes go through the lining, as far as the project says.
QString pipesText(const Content& content) {
  const auto& delivery = content.project.delivery;
  if (!delivery) return Text::tr("The plan does not say yet which pipes go through the lining.");
  const bool field = core::routeLength(delivery->field.route) > 0 && !delivery->field.over_rim;
  const bool overflow = delivery->overflow.kind == core::OverflowKind::pipe;
  if (field && overflow)
    return Text::tr("Through the lining go the pipe to the field and the overflow pipe.");
  if (field) return Text::tr("Through the lining goes the pipe to the field.");
  if (overflow) return Text::tr("Through the lining goes the overflow pipe.");
  return Text::tr("By this plan no pipe goes through the lining: pipes lie over the rim.");
}

void addPipes(Sheet& sheet, const Content& content) {
  sheet.heading(Text::tr("Pipes and collars, before coat 1"));
  sheet.paragraph(pipesText(content));
  addSteps(
      sheet,
      {{{"pipe_through"},
        Text::tr("Every pipe through the wall is laid before coat 1. Roughen it where the plaster will hold "
                 "it; smooth plastic lets water along."),
        true},
       {{"ram"},
        Text::tr("Bed it in rammed earth over its whole length, so that it cannot sink and break away."),
        true},
       {{"mix_dry"},
        Text::tr("Set a collar of stiff plaster around it, a hand's breadth wide on every side, let into "
                 "the earth wall. Coat 1 goes on while the collar is still damp."),
        true},
       {{"pipe_over"},
        Text::tr("Where it can be, take the pipe over the rim instead: a hole that is not made cannot "
                 "leak.")}});
}

}  // namespace

void buildCoats(Sheet& sheet, const Content& content) {
  addStep(sheet, neverAloneStep());
  addPipes(sheet, content);
  sheet.breakPage();
  sheet.heading(Text::tr("Pipes through the wall and over the rim"));
  sheet.drawing(std::min(kPipes_mm, sheet.height() - kHeading_mm),
                [&content](QPainter& painter, const QRectF& box) {
                  drawings::drawPipeDetails(painter, box, content.project, content.plan, content.format, {});
                });
  for (const CoatQuantities& coat : content.plan.quantities.coats) {
    sheet.breakPage();
    addCoat(sheet, content, coat);
  }
}

}  // namespace ui::handouts
