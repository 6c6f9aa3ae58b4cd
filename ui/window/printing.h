#pragma once

class QPrinter;

namespace ui {

namespace handouts {
class Handout;
}

/// Prints the pages of a handout that the printer was asked for, at real size.
void printPages(const handouts::Handout& handout, QPrinter& printer);

}  // namespace ui
