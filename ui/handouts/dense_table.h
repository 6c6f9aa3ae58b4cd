#pragma once

#include "ui/handouts/sheet.h"

#include <vector>

namespace ui::handouts {

/// A table whose rows stand close, for a page that must hold many of them. A row without cells is
/// a heavy line between two parts.
void addDenseTable(Sheet& sheet, const std::vector<Column>& columns,
                   const std::vector<std::vector<Cell>>& rows);

}  // namespace ui::handouts
