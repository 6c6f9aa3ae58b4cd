#pragma once

#include "ui/handouts/handout.h"
#include "ui/handouts/sheet.h"

#include <QString>
#include <span>

namespace ui::handouts {

/// One kind of sheet. To add a sheet, write its build function and add a row to the table.
struct PageKind {
  const char* code;   ///< letter of the reader (F farmer, M mason, P planner, E engineer) and a number
  const char* title;  ///< to be translated in the context "Handouts"
  bool construction;  ///< carries the cautions, and the stop notice when a finding says so
  bool (*applies)(const Content&);
  void (*build)(Sheet&, const Content&);
};

std::span<const PageKind> pageKinds();

/// Whether a finding says stop and no licensed engineer's override is recorded.
bool isStopped(const Content& content);
/// Whose word stands against a stop: name, licence, date and reason; empty when there is none or no stop.
QString overrideText(const Content& content);

void buildCover(Sheet& sheet, const Content& content);
void buildMaterials(Sheet& sheet, const Content& content);
void buildBill(Sheet& sheet, const Content& content);
void buildMixCards(Sheet& sheet, const Content& content);
void buildPlanDrawing(Sheet& sheet, const Content& content);
void buildSection(Sheet& sheet, const Content& content);
void buildWallFoot(Sheet& sheet, const Content& content);
void buildSettingOut(Sheet& sheet, const Content& content);
void buildGround(Sheet& sheet, const Content& content);
void buildWorkCalendar(Sheet& sheet, const Content& content);
void buildWettingCalendar(Sheet& sheet, const Content& content);
void buildDipStick(Sheet& sheet, const Content& content);
void buildWaterYear(Sheet& sheet, const Content& content);
void buildFlowLog(Sheet& sheet, const Content& content);
void buildLeakForm(Sheet& sheet, const Content& content);
void buildSafety(Sheet& sheet, const Content& content);
void buildWaterBalance(Sheet& sheet, const Content& content);
void buildWaterSizes(Sheet& sheet, const Content& content);
void buildWaterFigures(Sheet& sheet, const Content& content);
void buildPipes(Sheet& sheet, const Content& content);
void buildOverflow(Sheet& sheet, const Content& content);
void buildStability(Sheet& sheet, const Content& content);
void buildThresholds(Sheet& sheet, const Content& content);
void buildOneGo(Sheet& sheet, const Content& content);
void buildFirstFilling(Sheet& sheet, const Content& content);
void buildWorkFigures(Sheet& sheet, const Content& content);
void buildMoneyBill(Sheet& sheet, const Content& content);
void buildMoneyFigures(Sheet& sheet, const Content& content);
void buildOptions(Sheet& sheet, const Content& content);
void buildDigging(Sheet& sheet, const Content& content);
void buildStoneBed(Sheet& sheet, const Content& content);
void buildCoats(Sheet& sheet, const Content& content);
void buildStages(Sheet& sheet, const Content& content);
void buildSectionAlong(Sheet& sheet, const Content& content);
void buildUse(Sheet& sheet, const Content& content);
void buildCleaning(Sheet& sheet, const Content& content);
void buildJarForm(Sheet& sheet, const Content& content);
void buildTestPits(Sheet& sheet, const Content& content);
void buildSlopeForm(Sheet& sheet, const Content& content);
void buildRibbonForm(Sheet& sheet, const Content& content);
void buildCalculation(Sheet& sheet, const Content& content);
void buildFindings(Sheet& sheet, const Content& content);

}  // namespace ui::handouts
