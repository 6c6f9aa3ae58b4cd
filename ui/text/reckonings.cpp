#include "ui/text/reckonings.h"

#include "ui/text/reckoner.h"
#include "ui/text/words_table.h"

#include <QCoreApplication>
#include <array>

namespace ui::words {
namespace {

constexpr std::array kGroups{
    Entry{"tank", QT_TRANSLATE_NOOP("ui::words", "The tank")},
    Entry{"earthwork", QT_TRANSLATE_NOOP("ui::words", "Pit, platform and setting out")},
    Entry{"lining", QT_TRANSLATE_NOOP("ui::words", "Coats, materials and batches")},
    Entry{"customary", QT_TRANSLATE_NOOP("ui::words", "Customary bill")},
    Entry{"labour", QT_TRANSLATE_NOOP("ui::words", "Labour")},
    Entry{"dates", QT_TRANSLATE_NOOP("ui::words", "Dates and people by day")},
    Entry{"records", QT_TRANSLATE_NOOP("ui::words", "Measured on site")},
    Entry{"one_go", QT_TRANSLATE_NOOP("ui::words", "Coats in one go")},
    Entry{"filling", QT_TRANSLATE_NOOP("ui::words", "First filling")},
    Entry{"weather", QT_TRANSLATE_NOOP("ui::words", "Weather window")},
    Entry{"water", QT_TRANSLATE_NOOP("ui::words", "Will the water last")},
    Entry{"source", QT_TRANSLATE_NOOP("ui::words", "From the source")},
    Entry{"pipes", QT_TRANSLATE_NOOP("ui::words", "To the field")},
    Entry{"emptying", QT_TRANSLATE_NOOP("ui::words", "Emptying")},
    Entry{"overflow", QT_TRANSLATE_NOOP("ui::words", "Overflow")},
    Entry{"trap", QT_TRANSLATE_NOOP("ui::words", "Silt trap")},
    Entry{"leak", QT_TRANSLATE_NOOP("ui::words", "Leak test")},
    Entry{"notes", QT_TRANSLATE_NOOP("ui::words", "Field notes")},
    Entry{"site", QT_TRANSLATE_NOOP("ui::words", "Ground, platform and spoil")},
    Entry{"stability", QT_TRANSLATE_NOOP("ui::words", "Stability")},
    Entry{"bill", QT_TRANSLATE_NOOP("ui::words", "Bill and shares")},
    Entry{"linings", QT_TRANSLATE_NOOP("ui::words", "Linings")},
    Entry{"ranges", QT_TRANSLATE_NOOP("ui::words", "Ranges")},
    Entry{"options", QT_TRANSLATE_NOOP("ui::words", "Options")},
};

}  // namespace

std::span<const std::string_view> reckoningGroups() {
  static const auto ids = [] {
    std::array<std::string_view, kGroups.size()> all;
    for (std::size_t k = 0; k < kGroups.size(); ++k) all[k] = kGroups[k].id;
    return all;
  }();
  return ids;
}

QString reckoningGroupName(std::string_view group) {
  return lookUp(kGroups, group, "group of reckonings");
}

std::vector<Reckoning> reckonings(const core::Project& project, const core::Plan& plan,
                                  const Formatter& format) {
  const Reckoner reckoner(project, plan, format);
  std::vector<Reckoning> all;
  for (const Entry& group : kGroups) reckoner.add(group.id, all);
  return all;
}

std::vector<Reckoning> reckoningsOf(std::string_view group, const core::Project& project,
                                    const core::Plan& plan, const Formatter& format) {
  std::vector<Reckoning> all;
  Reckoner(project, plan, format).add(group, all);
  return all;
}

}  // namespace ui::words
