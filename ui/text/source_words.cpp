#include "ui/text/range_words.h"
#include "ui/text/words.h"
#include "ui/text/words_table.h"

#include <QCoreApplication>
#include <QStringList>
#include <array>
#include <stdexcept>

namespace ui::words {
namespace {

constexpr std::array kTags{
    Entry{"pub", QT_TRANSLATE_NOOP("ui::words", "published")},
    Entry{"cp", QT_TRANSLATE_NOOP("ui::words", "common practice, no source")},
    Entry{"mem", QT_TRANSLATE_NOOP("ui::words", "from memory, to be verified")},
    Entry{"own",
          QT_TRANSLATE_NOOP("ui::words", "this program's proposal, to be changed where practice differs")},
    Entry{"data", QT_TRANSLATE_NOOP("ui::words", "entered or fixed by the design")},
};

/// Sources without a proper name to cite are put into the reader's language.
constexpr std::array kUnnamedSources{
    Entry{"user", QT_TRANSLATE_NOOP("ui::words", "measured or chosen on site")},
    Entry{"exact",
          QT_TRANSLATE_NOOP("ui::words",
                            "plane and solid geometry; the prismoidal formula is exact for a straight "
                            "batter")},
    Entry{"sums", QT_TRANSLATE_NOOP("ui::words", "plain sums and products of numbers of the plan")},
    Entry{"common_practice", QT_TRANSLATE_NOOP("ui::words", "common practice, no source")},
    Entry{"own", QT_TRANSLATE_NOOP("ui::words", "this program's proposal; change it to suit the district")},
    Entry{"memory", QT_TRANSLATE_NOOP("ui::words", "from memory, to be verified")},
};

constexpr std::array kSeverities{
    Entry{"note", QT_TRANSLATE_NOOP("ui::words", "Note")},
    Entry{"caution", QT_TRANSLATE_NOOP("ui::words", "Caution")},
    Entry{"stop", QT_TRANSLATE_NOOP("ui::words", "Stop")},
};

std::string_view idOf(core::Tag tag) {
  switch (tag) {
    case core::Tag::pub:
      return "pub";
    case core::Tag::cp:
      return "cp";
    case core::Tag::mem:
      return "mem";
    case core::Tag::own:
      return "own";
    case core::Tag::data:
      return "data";
  }
  throw std::logic_error("tag without a name");
}

std::string_view idOf(core::Severity severity) {
  switch (severity) {
    case core::Severity::note:
      return "note";
    case core::Severity::caution:
      return "caution";
    case core::Severity::stop:
      return "stop";
  }
  throw std::logic_error("severity without a name");
}

bool hasRange(const core::Field& field) {
  return field.kind == core::FieldKind::number || field.kind == core::FieldKind::whole;
}

}  // namespace

QString tagName(core::Tag tag) {
  return lookUp(kTags, idOf(tag), "tag");
}

QString severityName(core::Severity severity) {
  return lookUp(kSeverities, idOf(severity), "severity");
}

QString sourceText(std::string_view source_key) {
  const core::Source& source = core::source(source_key);
  if (has(kUnnamedSources, source_key)) return lookUp(kUnnamedSources, source_key, "source");
  return QCoreApplication::translate("ui::words", "%1 (%2)")
      .arg(fromCore(source.citation), tagName(source.tag));
}

QString fieldRange(const core::Field& field, const Formatter& format) {
  if (!hasRange(field)) return {};
  return rangeText({field.least, field.most, field.unit, field.decimals}, format);
}

QString fieldTip(const core::Field& field, const Formatter& format) {
  QStringList lines{fieldHelp(field.id)};
  if (hasRange(field)) {
    lines << QCoreApplication::translate("ui::words", "Allowed: %1.").arg(fieldRange(field, format));
  }
  if (field.kind != core::FieldKind::text) {
    lines << QCoreApplication::translate("ui::words", "Source of the default: %1.")
                 .arg(sourceText(field.source));
  }
  return lines.join(u'\n');
}

}  // namespace ui::words
