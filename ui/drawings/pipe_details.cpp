#include "ui/drawings/drawings.h"
#include "ui/drawings/figure.h"
#include "ui/drawings/leaders.h"
#include "ui/drawings/pipe_sections.h"
#include "ui/drawings/scale.h"

#include <QCoreApplication>
#include <algorithm>
#include <functional>
#include <vector>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

constexpr double kExample_mm = 32, kExampleCrest_m = 0.1;  // where no field line is entered
constexpr double kColumn_mm = 7;                           // from a section to its numbers
constexpr double kBetween_mm = 5, kHead_mm = 2;

/// The pipe of the field line; none where no line is entered.
const core::FieldLine* fieldLine(const core::Project& project) {
  if (!project.delivery || project.delivery->field.route.size() < 2) return nullptr;
  return &project.delivery->field;
}

DrawnPipe drawnPipe(const core::Project& project) {
  const core::FieldLine* line = fieldLine(project);
  return {(line ? line->pipe.outside_mm : kExample_mm) / 1000,
          line ? line->crest_over_rim_m : kExampleCrest_m};
}

/// What a number of the key says.
QString textOf(PipePart part, const core::Project& project, const core::Plan& plan, const Formatter& format) {
  const QString size = thicknessText(drawnPipe(project).outside_m, format);
  switch (part) {
    case PipePart::clear_face:
      return Text::tr("clear face: inside of the finished plaster");
    case PipePart::coats:
      return Text::tr("coats, %1 thick in all, each brought up to the collar")
          .arg(thicknessText(plan.geometry.liningThickness(), format));
    case PipePart::pit_wall:
      return Text::tr("pit wall, as it is dug; ground behind it");
    case PipePart::pipe:
      return fieldLine(project) ? Text::tr("pipe, %1 outside").arg(size)
                                : Text::tr("pipe, %1 outside as an example").arg(size);
    case PipePart::collar:
      return Text::tr("collar of stiff mortar all round the pipe");
    case PipePart::goes_on:
      return Text::tr("outside end: on beyond the pit edge, no joint in the wall");
    case PipePart::clamp:
      return Text::tr("clamp: the pipe cannot pull or shake on the rim");
    case PipePart::mouth:
      return Text::tr("bell mouth, above the dead level");
    case PipePart::dead_level:
      return Text::tr("dead level: %1 over the clear floor")
          .arg(format.quantity(plan.tank.dead_level_m, core::Unit::metre, 2));
  }
  throw std::logic_error("part of a pipe detail");
}

/// Numbers in a column, each with a line to its place.
void addNumbers(Figure& figure, std::vector<PipeMark> marks, double x, const Formatter& format,
                const Lettering& lettering, Align align) {
  std::ranges::stable_sort(marks, {}, [](const PipeMark& mark) { return mark.tip.y(); });
  std::vector<double> wanted;
  for (const PipeMark& mark : marks) wanted.push_back(mark.tip.y());
  const std::vector<double> heights = spread(wanted, height_mm(lettering));
  const double gap = align == Align::right ? 1.2 : -1.2;
  for (std::size_t k = 0; k < marks.size(); ++k) {
    QPainterPath dot;
    dot.addEllipse(marks[k].tip, 0.8, 0.8);
    figure.addSolid(dot);
    figure.add(marks[k].tip, {x + gap, heights[k]}, Line::thin);
    figure.addText(format.integer(static_cast<int>(marks[k].part) + 1),
                   {x, heights[k] + lettering.cap_mm / 2}, lettering, align);
  }
}

void addKey(Figure& figure, std::vector<PipePart> parts, const std::function<QString(PipePart)>& text,
            const Formatter& format, const Lettering& lettering) {
  std::ranges::sort(parts);
  const auto repeated = std::ranges::unique(parts);
  parts.erase(repeated.begin(), repeated.end());
  const double x = figure.bounds().left(), wide = width_mm(format.integer(9), lettering) + 3;
  double y = figure.bounds().bottom() + 3 + ascent_mm(lettering);
  for (const PipePart part : parts) {
    figure.addText(format.integer(static_cast<int>(part) + 1), {x, y}, lettering);
    figure.addText(text(part), {x + wide, y}, lettering);
    y += height_mm(lettering) + 0.4;
  }
}

using AddSection = PipeMarks (*)(Figure&, const core::geometry::TankGeometry&, const DrawnPipe&, double,
                                 QPointF);

struct Section {
  AddSection add;
  QString head;
};

/// Adds a section with its numbers and head, its left end at x and its top at 0.
/// @return the right end
double addSection(Figure& figure, const Section& section, double x, const core::Plan& plan,
                  const DrawnPipe& pipe, double n, const Formatter& format, const Lettering& lettering,
                  std::vector<PipePart>& parts) {
  const double numbers = kColumn_mm + width_mm(format.integer(9), lettering);
  Figure alone;
  section.add(alone, plan.geometry, pipe, n, {});
  const QRectF room = alone.bounds();
  const PipeMarks marks =
      section.add(figure, plan.geometry, pipe, n, QPointF(x + numbers, 0) - room.topLeft());
  const double left = x + numbers - kColumn_mm, right = x + numbers + room.width() + kColumn_mm;
  addNumbers(figure, marks.left, left, format, lettering, Align::right);
  addNumbers(figure, marks.right, right, format, lettering, Align::left);
  for (const auto& side : {marks.left, marks.right})
    for (const PipeMark& mark : side) parts.push_back(mark.part);
  figure.addText(section.head, {x, -kHead_mm - descent_mm(lettering)}, lettering);
  return std::max(right + width_mm(format.integer(9), lettering), x + width_mm(section.head, lettering));
}

Figure pipesFigure(const core::Project& project, const core::Plan& plan, const Formatter& format,
                   const Style& style, double n) {
  const Lettering lettering{style.text_mm};
  const DrawnPipe pipe = drawnPipe(project);
  Figure figure;
  std::vector<PipePart> parts;
  double x = 0;
  for (const Section& section : {Section{addPipeThroughWall, Text::tr("Pipe through the wall")},
                                 Section{addPipeOverRim, Text::tr("Pipe over the rim")}})
    x = addSection(figure, section, x, plan, pipe, n, format, lettering, parts) + kBetween_mm;
  addKey(
      figure, parts, [&](PipePart part) { return textOf(part, project, plan, format); }, format, lettering);
  addScaleBar(figure, {figure.bounds().left() + 2, figure.bounds().bottom() + 4}, n, format, style);
  return figure;
}

}  // namespace

int drawPipeDetails(QPainter& painter, const QRectF& box_mm, const core::Project& project,
                    const core::Plan& plan, const Formatter& format, const Style& style) {
  return paintFitted(painter, box_mm, style,
                     [&](double n) { return pipesFigure(project, plan, format, style, n); });
}

}  // namespace ui::drawings
