#include "ui/handouts/page_table.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>

namespace ui::handouts {
namespace {

bool always(const Content&) {
  return true;
}

bool hasBill(const Content& content) {
  return content.plan.quantities.customary.has_value();
}

bool hasStoneBed(const Content& content) {
  return content.plan.geometry.stoneBed() > 0;
}

bool hasWorks(const Content& content) {
  return content.plan.works.has_value();
}

bool hasWater(const Content& content) {
  return content.plan.water.has_value();
}

bool hasDelivery(const Content& content) {
  return content.plan.delivery.has_value();
}

bool hasFilling(const Content& content) {
  return content.plan.works && content.plan.works->filling;
}

bool hasMoney(const Content& content) {
  return content.plan.cost.has_value();
}

bool hasOptions(const Content& content) {
  return content.plan.options.size() > 1;
}

bool hasFindings(const Content& content) {
  return !content.plan.findings.empty();
}

constexpr std::array kPages{
    PageKind{"F1", QT_TRANSLATE_NOOP("Handouts", "The tank at a glance"), false, always, buildCover},
    PageKind{"F11", QT_TRANSLATE_NOOP("Handouts", "Test pits"), false, always, buildTestPits},
    PageKind{"F13", QT_TRANSLATE_NOOP("Handouts", "Soil by ball and ribbon"), false, always, buildRibbonForm},
    PageKind{"F10", QT_TRANSLATE_NOOP("Handouts", "Jar test"), false, always, buildJarForm},
    PageKind{"F12", QT_TRANSLATE_NOOP("Handouts", "Slope by water level"), false, always, buildSlopeForm},
    PageKind{"P1", QT_TRANSLATE_NOOP("Handouts", "Materials"), false, always, buildMaterials},
    PageKind{"P2", QT_TRANSLATE_NOOP("Handouts", "Customary bill beside the computed one"), false, hasBill,
             buildBill},
    PageKind{"M1", QT_TRANSLATE_NOOP("Handouts", "Mix cards"), true, always, buildMixCards},
    PageKind{"M2", QT_TRANSLATE_NOOP("Handouts", "Plan"), true, always, buildPlanDrawing},
    PageKind{"M3", QT_TRANSLATE_NOOP("Handouts", "Section A-A"), true, always, buildSection},
    PageKind{"M15", QT_TRANSLATE_NOOP("Handouts", "Section B-B"), true, always, buildSectionAlong},
    PageKind{"M4", QT_TRANSLATE_NOOP("Handouts", "Foot of the wall and depth rod"), true, always,
             buildWallFoot},
    PageKind{"M5", QT_TRANSLATE_NOOP("Handouts", "Setting out"), true, always, buildSettingOut},
    PageKind{"M8", QT_TRANSLATE_NOOP("Handouts", "Ground and platform"), true, always, buildGround},
    PageKind{"M14", QT_TRANSLATE_NOOP("Handouts", "Build stages"), true, always, buildStages},
    PageKind{"M11", QT_TRANSLATE_NOOP("Handouts", "Digging"), true, always, buildDigging},
    PageKind{"M12", QT_TRANSLATE_NOOP("Handouts", "Stone bed"), true, hasStoneBed, buildStoneBed},
    PageKind{"M13", QT_TRANSLATE_NOOP("Handouts", "Coats and pipes"), true, always, buildCoats},
    PageKind{"M6", QT_TRANSLATE_NOOP("Handouts", "Work calendar"), true, hasWorks, buildWorkCalendar},
    PageKind{"M7", QT_TRANSLATE_NOOP("Handouts", "Wetting calendar"), true, hasWorks, buildWettingCalendar},
    PageKind{"M9", QT_TRANSLATE_NOOP("Handouts", "Each coat in one go"), true, hasWorks, buildOneGo},
    PageKind{"M10", QT_TRANSLATE_NOOP("Handouts", "First filling"), true, hasFilling, buildFirstFilling},
    PageKind{"F7", QT_TRANSLATE_NOOP("Handouts", "Bill and shares"), false, hasMoney, buildMoneyBill},
    PageKind{"F2", QT_TRANSLATE_NOOP("Handouts", "Dip-stick"), false, always, buildDipStick},
    PageKind{"F4", QT_TRANSLATE_NOOP("Handouts", "Water through the year"), false, hasWater, buildWaterYear},
    PageKind{"F8", QT_TRANSLATE_NOOP("Handouts", "Use by month"), false, hasWater, buildUse},
    PageKind{"F5", QT_TRANSLATE_NOOP("Handouts", "Flow log"), false, always, buildFlowLog},
    PageKind{"F6", QT_TRANSLATE_NOOP("Handouts", "Leak test"), false, always, buildLeakForm},
    PageKind{"F9", QT_TRANSLATE_NOOP("Handouts", "Cleaning and crack repair"), false, always, buildCleaning},
    PageKind{"F3", QT_TRANSLATE_NOOP("Handouts", "Working and living safely"), false, always, buildSafety},
    PageKind{"P4", QT_TRANSLATE_NOOP("Handouts", "Supply and need"), false, hasWater, buildWaterBalance},
    PageKind{"P5", QT_TRANSLATE_NOOP("Handouts", "Tank size and beds"), false, hasWater, buildWaterSizes},
    PageKind{"P6", QT_TRANSLATE_NOOP("Handouts", "Figures of the water balance"), false, hasWater,
             buildWaterFigures},
    PageKind{"P7", QT_TRANSLATE_NOOP("Handouts", "Pipes and siphon"), false, hasDelivery, buildPipes},
    PageKind{"P8", QT_TRANSLATE_NOOP("Handouts", "Overflow, silt trap and leak test"), false, hasDelivery,
             buildOverflow},
    PageKind{"P9", QT_TRANSLATE_NOOP("Handouts", "Works: tasks, people and weather"), false, hasWorks,
             buildWorkFigures},
    PageKind{"P10", QT_TRANSLATE_NOOP("Handouts", "Money: linings and ranges"), false, hasMoney,
             buildMoneyFigures},
    PageKind{"P11", QT_TRANSLATE_NOOP("Handouts", "Options side by side"), false, hasOptions, buildOptions},
    PageKind{"E1", QT_TRANSLATE_NOOP("Handouts", "Engineer's calculation: cut and downhill side"), false,
             always, buildStability},
    PageKind{"E2", QT_TRANSLATE_NOOP("Handouts", "Thresholds of site and safety"), false, always,
             buildThresholds},
    PageKind{"P3", QT_TRANSLATE_NOOP("Handouts", "Findings and their sources"), false, hasFindings,
             buildFindings},
    PageKind{"E3", QT_TRANSLATE_NOOP("Handouts", "Calculation sheet"), false, always, buildCalculation},
};

}  // namespace

std::span<const PageKind> pageKinds() {
  return kPages;
}

namespace {

bool hasStop(const Content& content) {
  return std::ranges::any_of(content.plan.findings,
                             [](const core::Finding& f) { return f.severity == core::Severity::stop; });
}

}  // namespace

bool isStopped(const Content& content) {
  return hasStop(content) && !content.project.site.stop_override.isRecorded();
}

QString overrideText(const Content& content) {
  const core::StopOverride& word = content.project.site.stop_override;
  if (!hasStop(content) || !word.isRecorded()) return {};
  return QCoreApplication::translate("Handouts",
                                     "A finding says stop; overridden by %1, licence %2, on %3: %4.")
      .arg(QString::fromStdString(word.engineer), QString::fromStdString(word.licence),
           content.format.date(*word.date), QString::fromStdString(word.reason));
}

}  // namespace ui::handouts
