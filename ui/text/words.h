#pragma once

#include "core/base/problem.h"
#include "core/base/source.h"
#include "core/plan.h"
#include "core/project/fields.h"
#include "core/works/build_days.h"
#include "ui/text/formatter.h"

#include <QString>
#include <QStringList>
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
/// Whether a task has a name: a project may hold a wish for one that there is not.
bool hasTaskName(std::string_view task_id);
/// How far the tank is: "pegs and strings", "coat 1 under wet sacks"; a stage of core::works::BuildDay.
QString stageName(std::string_view stage);
/// "Mon 12 Oct 2026: pegs and strings"; the stage alone where there is no date.
QString dayAndStage(const core::works::BuildDay& day, const Formatter& format);
QString skillName(std::string_view skill);
QString dimensionName(std::string_view dimension_id);  ///< "clear length", "pit depth"
QString levelName(std::string_view level_id);          ///< "Top of stone bed"
QString pegKindName(std::string_view kind);            ///< "pit corner at ground"
QString tieKindName(std::string_view kind);            ///< "diagonal"
QString partName(std::string_view part);               ///< part of the project file: "labour and dates"
QString tagName(core::Tag tag);                        ///< "published", "common practice, no source"
QString sourceText(std::string_view source_key);       ///< citation with tag

/// Name of a crop of the table; a name that is not in it is the user's own and comes back as it stands.
QString cropName(std::string_view id);
/// What a figure of core::water::figures(), core::hydraulics::figures() or core::cost::figures() is for:
/// "sheet metal roof".
QString figureName(std::string_view key);
/// What a threshold of core::site::thresholds() is for: "slope from which the ground is looked at closely".
QString thresholdName(std::string_view key);
/// Which set of a soil's strengths: "low", "typical", "high".
QString strengthName(std::string_view strength);

QString problemText(const core::Problem& problem,
                    const Formatter& format);  ///< place, value and allowed range
/// The same for a table of daily weather: a fault without a place is one of the table, not of the project
/// file.
QString tableProblemText(const core::Problem& problem, const Formatter& format);
/// The same for a table of spot heights.
QString surveyProblemText(const core::Problem& problem, const Formatter& format);
/// Name of a place in the project file, with its path: "Depth, floor to rim (tank.depth_m)"; of a
/// line of a weather table: "Line 17 of the table, rain".
QString placeText(std::string_view path, const Formatter& format);
QString findingText(const core::Finding& finding, const Formatter& format);
QString severityName(core::Severity severity);

/// Whether the water lasts, in one to three short sentences: how many years are good, and how bad the others
/// are.
QString waterHeadline(const core::water::WaterPlan& plan, const Formatter& format);
/// More sentences, one each: when water is missing, how long a full tank lasts, how fast it fills, sizes that
/// meet the target, spill.
QStringList waterAnswers(const core::water::WaterPlan& plan, const Formatter& format);
QString readingCount(int readings, const Formatter& format);  ///< "3 readings"
/// What the bucket-and-watch readings say, a line a month; empty when there are none.
QString readingsSummary(const core::Project& project, const Formatter& format);
/// That the daily record holds no whole year, when that is why there is no answer; else empty.
QString noWholeYear(const core::Project& project, const core::Plan& plan);
/// What daily record the project holds and how it is used, or what one looks like.
QString recordSummary(const core::Project& project, const core::Plan& plan, const Formatter& format);

/// What stands in the way of a number of core::hydraulics: "there is no fall from inlet to outlet".
QString hydraulicsFault(std::string_view code);
QString outletName(core::OutletKind kind);  ///< "hose"
/// How the ground lies and what the platform takes, one sentence each: fall, level of the platform, cut and
/// fill, whether the tank stands in natural ground and at which level it would, spoil and what to do with it.
QStringList groundAnswers(const core::Project& project, const core::Plan& plan, const Formatter& format);
/// Sentences about each part of the delivery, the one that matters most first; what is missing when there is
/// no answer.
QStringList sourceLineAnswers(const core::hydraulics::DeliveryPlan& plan, const Formatter& format);
QStringList fieldLineAnswers(const core::hydraulics::DeliveryPlan& plan, const Formatter& format);
QStringList overflowAnswers(const core::hydraulics::DeliveryPlan& plan, const Formatter& format);
QStringList siltTrapAnswers(const core::hydraulics::DeliveryPlan& plan, const Formatter& format);
QStringList leakAnswers(const core::hydraulics::DeliveryPlan& plan, const Formatter& format);

}  // namespace ui::words
