#pragma once

#include "ui/handouts/handout.h"
#include "ui/handouts/sheet.h"
#include "ui/handouts/water_inputs.h"

namespace ui::handouts {

/// Labour of each task at low, used and high rate, and the rates in force behind it.
void addRates(Sheet& sheet, const Content& content, SourceList& sources);

/// What was measured on site: median, count and spread beside what was entered; nothing without records.
void addRecords(Sheet& sheet, const Content& content);

/// The 52 weeks of the year and how fast fresh plaster dries; nothing without weather years.
void addWeatherWindow(Sheet& sheet, const Content& content, SourceList& sources);

}  // namespace ui::handouts
