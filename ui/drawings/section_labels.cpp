#include "ui/drawings/section_labels.h"

#include "ui/drawings/leaders.h"
#include "ui/drawings/wrap_lines.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <vector>

namespace ui::drawings {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Drawings)
};

using core::geometry::LevelMark;

constexpr double kLabelCaps = 16;     // widest line beside a level, in heights of its capitals
constexpr double kFromPit_mm = 9;     // from the pit to the texts beside it
constexpr double kRise_mm = 4;        // from the end of a level's line to its text
constexpr double kFromGround_mm = 2;  // between the ground and a text
constexpr double kBetween_mm = 0.6;   // from text to text

QString rimText(const core::Plan& plan) {
  if (plan.site.bench) return Text::tr("rim and platform: 0");
  return plan.site.has_relief ? Text::tr("rim: 0") : Text::tr("rim and ground: 0");
}

/// Texts beside the pit, each with a line from the level it names.
class LevelNames {
public:
  LevelNames(Figure& figure, const SectionShape& shape, const SectionGround& ground,
             const Lettering& lettering)
      : figure_(figure),
        shape_(shape),
        ground_(ground),
        lettering_(lettering),
        line_(height_mm(lettering)),
        text_x_(shape.right(shape.tank().pitOffset(shape.tank().depth())) + kFromPit_mm) {}

  /// Over the ground: the natural ground, and above it the rim.
  void addOver(const QString& rim, const QString& natural) const {
    double bottom = 0;
    if (ground_.hasRelief()) bottom = addNatural(natural) - kBetween_mm;
    const QStringList lines = wrapped(rim);
    const double top = bottomOver(bottom, lines) - line_ * static_cast<double>(lines.size());
    addText(lines, text_x_, top);
    addLine({text_x_ - kRise_mm - 1, 0}, top + line_ / 2);
  }

  /// Under the ground, from the top down.
  void addUnder(const std::vector<std::pair<QPointF, QString>>& levels) const {
    const double top = ground_.bottomFrom(text_x_) + kSectionEarth_mm + kFromGround_mm + line_ / 2;
    std::vector<QStringList> texts;
    std::vector<double> wanted, rooms;
    for (const auto& [place, text] : levels) {
      wanted.push_back(std::max(top, place.y()));
      texts.push_back(wrapped(text));
      rooms.push_back(static_cast<double>(texts.back().size()) * line_ + kBetween_mm);
    }
    const std::vector<double> heights = spread(wanted, rooms);
    for (std::size_t k = 0; k < levels.size(); ++k) {
      addText(texts[k], text_x_, heights[k] - line_ / 2);
      addLine(levels[k].first, heights[k]);
    }
  }

private:
  Figure& figure_;
  const SectionShape& shape_;
  const SectionGround& ground_;
  Lettering lettering_;
  double line_, text_x_;

  QStringList wrapped(const QString& text) const {
    return wrapLines(text, lettering_, kLabelCaps * lettering_.cap_mm);
  }

  /// As low as the ground under the lines allows, at most `bottom`.
  double bottomOver(double bottom, const QStringList& lines) const {
    return std::min(
        bottom, ground_.topBetween(text_x_ - kRise_mm, text_x_ + widest(lines, lettering_)) - kFromGround_mm);
  }

  void addText(const QStringList& lines, double left, double top) const {
    figure_.addLines(lines, {left, top + ascent_mm(lettering_)}, lettering_);
  }

  void addLine(QPointF from, double text_y) const {
    QPainterPath leader(from);
    leader.lineTo(std::max(from.x(), text_x_ - kRise_mm - 1), from.y());
    leader.lineTo(text_x_ - 1.5, text_y);
    figure_.add(leader, Line::thin);
  }

  double addNatural(const QString& text) const {
    const QStringList lines = wrapped(text);
    const double width = widest(lines, lettering_);
    const double left = std::max(text_x_, std::min(ground_.named.x(), ground_.toX() - width));
    const double bottom = ground_.topBetween(text_x_ - kRise_mm, left + width) - kFromGround_mm;
    const double top = bottom - line_ * static_cast<double>(lines.size());
    addText(lines, left, top);
    figure_.add(ground_.named, {std::clamp(ground_.named.x(), left, left + width), bottom + 0.3}, Line::thin);
    return top;
  }
};

void addLevels(Figure& figure, const SectionShape& shape, const SectionGround& ground, const core::Plan& plan,
               const Formatter& format, const Lettering& lettering) {
  const auto& g = shape.tank();
  const LevelNames names(figure, shape, ground, lettering);
  const auto& out = plan.setting_out;
  const auto down = [&](const QString& sentence, const LevelMark& mark) {
    return sentence.arg(format.quantity(mark.below_ground_m, core::Unit::metre, 2));
  };
  const auto place = [&](double z, double offset) { return QPointF(shape.right(offset), shape.level(z)); };
  const double full = g.fullLevel(), bottom = g.depth() - g.pitDepth();
  names.addOver(rimText(plan), Text::tr("natural ground"));
  names.addUnder(
      {{place(full, g.clearOffset(full)), down(Text::tr("overflow: %1 down"), out.mark("overflow"))},
       {place(0, 0), down(Text::tr("clear floor: %1 down"), out.clearFloor())},
       {place(bottom, g.pitOffset(bottom)), down(Text::tr("pit floor: %1 down"), out.mark("pit_floor"))}});
}

/// Widths along the cut; for a polygon they may differ from its greatest width, and then say where they are
/// taken.
class Widths {
public:
  Widths(const SectionShape& shape, const Formatter& format) : shape_(shape), format_(format) {}

  Measure at(double offset_m, double z_m, const QString& width, const QString& diameter) const {
    const double left = shape_.left(offset_m), right = shape_.right(offset_m), y = shape_.level(z_m);
    const double length_m = (right - left) / shape_.mm(1);
    const auto& outline = shape_.tank().outline();
    const bool whole = std::abs(length_m - extent(offset_m)) < 0.0005;
    const QString sentence = outline.isCircle()                  ? diameter
                             : whole                             ? width
                             : shape_.cut() == SectionCut::along ? Text::tr("%1, at B-B").arg(width)
                                                                 : Text::tr("%1, at A-A").arg(width);
    return {left, right, y, y, sentence.arg(format_.quantity(length_m, core::Unit::metre, 2))};
  }

private:
  const SectionShape& shape_;
  const Formatter& format_;

  double extent(double offset_m) const {
    const Eigen::Vector2d size = shape_.tank().outline().size(offset_m);
    return shape_.cut() == SectionCut::along ? size.x() : size.y();
  }
};

void addWidths(Figure& figure, const SectionShape& shape, const Formatter& format, const Lettering& lettering,
               LongText long_text) {
  const auto& g = shape.tank();
  const Widths widths(shape, format);
  const double rim = g.clearOffset(g.depth()), top = g.pitOffset(g.depth());
  const double bottom = g.depth() - g.pitDepth();
  const bool along = shape.cut() == SectionCut::along;
  addRows(figure, Side::above, figure.bounds().top() - 1,
          {widths.at(rim, g.depth(), along ? Text::tr("clear rim length %1") : Text::tr("clear rim width %1"),
                     Text::tr("clear rim diameter %1")),
           widths.at(top, g.depth(), along ? Text::tr("pit top length %1") : Text::tr("pit top width %1"),
                     Text::tr("pit top diameter %1"))},
          lettering, long_text);
  std::vector<Measure> below{
      widths.at(0, 0, along ? Text::tr("clear floor length %1") : Text::tr("clear floor width %1"),
                Text::tr("clear floor diameter %1")),
      widths.at(g.pitOffset(bottom), bottom,
                along ? Text::tr("pit floor length %1") : Text::tr("pit floor width %1"),
                Text::tr("pit floor diameter %1"))};
  std::ranges::sort(below, {}, [](const Measure& m) { return m.to - m.from; });
  addRows(figure, Side::below, figure.bounds().bottom(), below, lettering, long_text);
}

void addDepths(Figure& figure, const SectionShape& shape, const SectionGround& ground,
               const Formatter& format, const Lettering& lettering, LongText long_text) {
  const auto& g = shape.tank();
  const auto text = [&](const QString& sentence, double depth) {
    return sentence.arg(format.quantity(depth, core::Unit::metre, 2));
  };
  const double bottom = g.depth() - g.pitDepth();
  const double rim = ground.hasRelief() ? shape.left(g.pitOffset(g.depth())) : ground.fromX() + 1;
  addRows(figure, Side::left, ground.fromX(),
          {{0, shape.level(0), rim, shape.left(0), text(Text::tr("clear depth %1"), g.depth())},
           {0, shape.level(bottom), rim, shape.left(g.pitOffset(bottom)),
            text(Text::tr("pit depth %1"), g.pitDepth())}},
          lettering, long_text);
}

}  // namespace

void addSectionLabels(Figure& figure, const SectionShape& shape, const SectionGround& ground,
                      const core::Plan& plan, const Formatter& format, const Lettering& lettering,
                      LongText long_text) {
  addLevels(figure, shape, ground, plan, format, lettering);
  addWidths(figure, shape, format, lettering, long_text);
  addDepths(figure, shape, ground, format, lettering, long_text);
}

}  // namespace ui::drawings
