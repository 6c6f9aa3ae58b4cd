#include "ui/text/number_reader.h"

#include <QRegularExpression>

namespace ui {
namespace {

bool isDirectionMark(char32_t c) {
  return c == 0x061C || c == 0x200E || c == 0x200F || (c >= 0x202A && c <= 0x202E) ||
         (c >= 0x2066 && c <= 0x2069);
}

QString vulgarFraction(char32_t c) {
  switch (c) {
    case U'½':
      return QStringLiteral(" 1/2");
    case U'¼':
      return QStringLiteral(" 1/4");
    case U'¾':
      return QStringLiteral(" 3/4");
    case U'⅛':
      return QStringLiteral(" 1/8");
    case U'⅜':
      return QStringLiteral(" 3/8");
    case U'⅝':
      return QStringLiteral(" 5/8");
    case U'⅞':
      return QStringLiteral(" 7/8");
    default:
      return {};
  }
}

char32_t plainMark(char32_t c) {
  switch (c) {
    case U'−':
    case U'–':
      return U'-';
    case U'′':
    case U'‘':
    case U'’':
      return U'\'';
    case U'″':
    case U'“':
    case U'”':
      return U'"';
    case U'⁄':
      return U'/';
    case U'٫':
      return U'.';
    case U'٬':
    case U'،':
      return U',';
    case U'٪':
      return U'%';
    case U'²':
      return U'2';
    case U'³':
      return U'3';
    default:
      return c;
  }
}

QString plainCharacter(char32_t c) {
  if (isDirectionMark(c)) return {};
  if (const QString fraction = vulgarFraction(c); !fraction.isEmpty()) return fraction;
  if (QChar::category(c) == QChar::Number_DecimalDigit) return QString::number(QChar::digitValue(c));
  if (QChar::isSpace(c)) return QStringLiteral(" ");
  const char32_t mark = plainMark(c);
  return QString::fromUcs4(&mark, 1);
}

QString plainCharacters(const QString& text) {
  QString out;
  for (const char32_t c : text.toUcs4()) out += plainCharacter(c);
  return out;
}

/// Takes out group separators that are spaces or apostrophes, where this locale groups that way.
QString withoutLooseGroups(QString text, const QLocale& locale) {
  const QString group = plainCharacters(locale.groupSeparator());
  if (group != u" " && group != u"'") return text;
  static const QRegularExpression spaces(QStringLiteral("(?<=[0-9]) (?=[0-9]{3}(?![0-9/]))"));
  static const QRegularExpression apostrophes(QStringLiteral("(?<=[0-9])'(?=[0-9]{3}(?![0-9/]))"));
  return text.remove(group == u" " ? spaces : apostrophes);
}

bool isGrouped(const QString& text, QChar mark) {
  const QStringList groups = text.split(mark);
  if (groups.front().isEmpty() || groups.front().size() > 3 || groups.front() == u"0") return false;
  for (qsizetype i = 1; i < groups.size(); ++i) {
    const bool last = i + 1 == groups.size();
    if (groups[i].size() != 3 && (last || groups[i].size() != 2)) return false;
  }
  return true;
}

/// Grouped as anyone does, or as this locale shows the number: some leave four digits in front, "1076.391".
bool isGroupedHere(const QString& text, QChar mark, const QLocale& locale) {
  if (isGrouped(text, mark)) return true;
  bool is_whole = false;
  const qlonglong value = QString(text).remove(mark).toLongLong(&is_whole);
  return is_whole && plainCharacters(locale.toString(value)) == text;
}

/// Text in C form of digits with commas and points; empty when the marks make no sense.
QString resolveMarks(QString text, const QLocale& locale) {
  const auto last_comma = text.lastIndexOf(u',');
  const auto last_point = text.lastIndexOf(u'.');
  if (last_comma < 0 && last_point < 0) return text;
  QChar decimal = last_comma > last_point ? u',' : u'.';
  const QChar other = decimal == u',' ? u'.' : u',';
  const bool local_group = plainCharacters(locale.groupSeparator()) == decimal;
  if (text.count(decimal) > 1 ||
      (!text.contains(other) && local_group && isGroupedHere(text, decimal, locale))) {
    return !text.contains(other) && isGroupedHere(text, decimal, locale) ? text.remove(decimal) : QString();
  }
  const auto at = text.indexOf(decimal);
  const QString whole = text.left(at);
  if (whole.contains(other) && !isGroupedHere(whole, other, locale)) return {};
  return QString(whole).remove(other) + u'.' + text.mid(at + 1);
}

std::optional<double> fraction(const QString& over, const QString& under) {
  if (over.isEmpty()) return 0;
  const double divisor = under.toDouble();
  if (divisor == 0) return std::nullopt;
  return over.toDouble() / divisor;
}

}  // namespace

QString plainText(const QString& typed, const QLocale& locale) {
  QString text = plainCharacters(typed).simplified();
  text.replace(QStringLiteral("''"), QStringLiteral("\""));
  return withoutLooseGroups(text, locale);
}

std::optional<LeadingNumber> leadingNumber(const QString& plain, const QLocale& locale) {
  static const QRegularExpression pattern(
      QStringLiteral("^\\s*(?:([0-9]+)/([0-9]+)|([0-9][0-9.,]*|[.,][0-9]+)(?:\\s+([0-9]+)/([0-9]+))?)"));
  const QRegularExpressionMatch match = pattern.match(plain);
  if (!match.hasMatch()) return std::nullopt;
  const bool only_fraction = !match.captured(1).isEmpty();
  const auto part = only_fraction ? fraction(match.captured(1), match.captured(2))
                                  : fraction(match.captured(4), match.captured(5));
  if (!part) return std::nullopt;
  const QString rest = plain.mid(match.capturedEnd());
  if (only_fraction) return LeadingNumber{*part, rest};
  bool good = false;
  const double whole = resolveMarks(match.captured(3), locale).toDouble(&good);
  if (!good) return std::nullopt;
  return LeadingNumber{whole + *part, rest};
}

}  // namespace ui
