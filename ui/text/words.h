#pragma once

#include <string_view>

#include <QString>

#include "core/base/problem.h"
#include "core/base/source.h"
#include "core/plan.h"
#include "core/project/fields.h"
#include "ui/text/formatter.h"

namespace ui::words {

/// Every sentence and name that people read for core's ids and codes stands behind these functions.
/// A missing entry throws std::logic_error; a test walks all ids.

QString fieldLabel(std::string_view field_id);   ///< "Clear length"
QString fieldHelp(std::string_view field_id);    ///< one sentence: what is meant, how to measure it
QString choiceLabel(std::string_view field_id, std::string_view token);
/// Range, default's source and tag in one tool tip.
QString fieldTip(const core::Field& field, const Formatter& format);

QString layerName(std::string_view layer_id);        ///< "Stone bed", "Coat 1"
QString materialName(std::string_view material_id);  ///< "Cement", "Wet sacks"
QString taskName(std::string_view task_id);          ///< "Dig the pit", "Keep coat 1 wet"
QString skillName(std::string_view skill);
QString dimensionName(std::string_view dimension_id);  ///< "clear length", "pit depth"
QString levelName(std::string_view level_id);          ///< "Top of stone bed"
QString tagName(core::Tag tag);                        ///< "published", "common practice, no source"
QString sourceText(std::string_view source_key);       ///< citation with tag

QString problemText(const core::Problem& problem, const Formatter& format);  ///< place, value and allowed range
QString findingText(const core::Finding& finding, const Formatter& format);
QString severityName(core::Severity severity);

}  // namespace ui::words
