#include "core/exchange/short_form.h"
#include "core/exchange/short_form_fields.h"
#include "core/exchange/short_form_text.h"

#include <vector>

#include <fmt/format.h>

namespace core::exchange {
namespace {

using Parts = std::vector<std::string>;
using PartFields = std::span<const ShortField>;

std::size_t rowsOf(PartFields part, const Project& project) {
  return rowCount(field(part.front().id), project);
}

/// Spot heights do not fit on a line, and ground without them is of no kind that could be told.
bool canBeTold(const Field& field, const Project& project) {
  return field.id != "site.ground.kind" || project.site.ground.kind != GroundKind::spot_heights;
}

bool differs(PartFields part, const Project& project, const Project& as_made) {
  const std::size_t rows = rowsOf(part, project);
  if (rows != rowsOf(part, as_made)) return true;
  for (const ShortField& item : part) {
    const Field& field = core::field(item.id);
    for (std::size_t row = 0; row < rows; ++row) {
      if (field.get(project, row) != field.get(as_made, row)) return true;
    }
  }
  return false;
}

std::string partText(PartFields part, const Project& project, std::size_t row) {
  std::string text;
  for (const ShortField& item : part) {
    const Field& field = core::field(item.id);
    text += item.token;
    text += shortValue(field, field.get(project, row));
  }
  return text;
}

void addParts(PartFields part, const Project& project, Parts& parts) {
  static const Project as_made;
  const Field& first = field(part.front().id);
  if (!first.applies(project) || !canBeTold(first, project)) return;
  if (part.front().written == Written::when_changed && !differs(part, project, as_made)) return;
  for (std::size_t row = 0; row < rowsOf(part, project); ++row) parts.push_back(partText(part, project, row));
}

void addCorners(const Tank& tank, Parts& parts) {
  if (tank.shape != Shape::polygon) return;
  for (const Eigen::Vector2d& corner : tank.outline_m)
    parts.push_back(fmt::format("{}{}/{}", kCornerToken, shortNumber(corner.x()), shortNumber(corner.y())));
}

}  // namespace

std::string shortForm(const Project& project) {
  Parts parts{std::string(kShortVersion)};
  for (const ShortField& item : kShortFields) {
    if (item.token != kSamePart) addParts(shortFieldsOf(item.token), project, parts);
  }
  addCorners(project.tank, parts);
  const std::string text = joinedParts(parts);
  return fmt::format("{} *{}", text, checkGroup(text));
}

}  // namespace core::exchange
