#pragma once

#include "core/base/problem.h"
#include "core/base/source.h"
#include "core/plan.h"
#include "core/project/fields.h"
#include "ui/text/formatter.h"

#include <QString>
#include <span>
#include <string_view>

namespace ui::words {

/// Every sentence and name that people read for core's ids and codes stands behind these functions.
/// A missing entry throws std::logic_error; a test walks all ids.

QString fieldLabel(std::string_view field_id);  ///< "Clear length"
QString fieldHelp(std::string_view field_id);   ///< one sentence: what is meant, how to measure it
QString choiceLabel(std::string_view field_id, std::string_view token);
/// Help, range, default's source and tag in one tool tip, a line each.
QString fieldTip(const core::Field& field, const Formatter& format);
/// Allowed range of a number: "0.30 m to 4.00 m". Empty for other kinds.
QString fieldRange(const core::Field& field, const Formatter& format);

QString layerName(std::string_view layer_id);  ///< "Stone bed", "Coat 1"; also the other parts of the picture
QString materialName(std::string_view material_id);  ///< "Cement", "Wet sacks"
/// Amount in a material's unit ("kg", "bag", "m3", "L", "piece"): "12 bags".
QString amount(double value, std::string_view material_unit, const Formatter& format);
QString taskName(std::string_view task_id);  ///< "Dig the pit", "Keep coat 1 wet"
QString skillName(std::string_view skill);
QString dimensionName(std::string_view dimension_id);  ///< "clear length", "pit depth"
QString levelName(std::string_view level_id);          ///< "Top of stone bed"
QString pegKindName(std::string_view kind);            ///< "pit corner at ground"
QString tieKindName(std::string_view kind);            ///< "diagonal"
QString partName(std::string_view part);               ///< part of the project file: "labour and dates"
QString tagName(core::Tag tag);                        ///< "published", "common practice, no source"
QString sourceText(std::string_view source_key);       ///< citation with tag

QString problemText(const core::Problem& problem,
                    const Formatter& format);  ///< place, value and allowed range
/// Name of a place in the project file, with its path: "Depth, floor to rim (tank.depth_m)".
QString placeText(std::string_view path, const Formatter& format);
QString findingText(const core::Finding& finding, const Formatter& format);
QString severityName(core::Severity severity);

}  // namespace ui::words
