#include "ui/handouts/pdf_text.h"

#include "ui/handouts/pdf_objects.h"

#include <QStringEncoder>
#include <algorithm>
#include <exception>
#include <optional>

namespace ui::handouts {
namespace {

constexpr double kSamePlace = 0.01;  // dots; QPdfWriter writes nine digits

/// A text as it stands in the content of a page: where its baseline starts [dots], its first "BT" and what
/// follows its last "ET". QPdfWriter writes "a b c d x y cm" and a pen before a text, then "q", a colour,
/// "BT", glyphs, "ET", "Q" for each piece of it in one font. A reader takes size and turn of the letters from
/// what holds at the end of the mark, which therefore stands before the "Q".
struct Drawn {
  QPointF start;
  qsizetype begin, end;
};

std::optional<QPointF> placeIn(QByteArrayView line) {
  if (!line.endsWith(" cm")) return std::nullopt;
  const QList<QByteArray> words = line.toByteArray().split(' ');
  if (words.size() != 7) return std::nullopt;
  return QPointF(words[4].toDouble(), words[5].toDouble());
}

/// Reads the content of a page line by line.
class Reader {
public:
  explicit Reader(const QByteArray& content) {
    qsizetype at = 0;
    for (qsizetype end = content.indexOf('\n'); end >= 0; end = content.indexOf('\n', at)) {
      read(QByteArrayView(content).sliced(at, end - at), at, end + 1);
      at = end + 1;
    }
  }
  const std::vector<Drawn>& texts() const { return texts_; }

private:
  void read(QByteArrayView line, qsizetype begin, qsizetype end) {
    if (const auto place = placeIn(line)) {
      place_ = place;
      is_open_ = false;
    } else if (line == "BT") {
      open(begin);
    } else if (line == "ET" && is_open_) {
      texts_.back().end = end;
    } else if (line == "Q" && before_ != "ET") {  // leaves the place, not only a piece
      place_.reset();
      is_open_ = false;
    }
    before_ = line;
  }
  void open(qsizetype begin) {
    if (is_open_ || !place_) return;
    texts_.push_back({*place_, begin, begin});
    is_open_ = true;
  }

  std::vector<Drawn> texts_;
  std::optional<QPointF> place_;
  bool is_open_ = false;  // whether more pieces may belong to the last text
  QByteArrayView before_;
};

QByteArray spanOf(const QString& text) {
  QStringEncoder toBytes(QStringConverter::Utf16BE);
  return "/Span <</ActualText <FEFF" + QByteArray(toBytes(text)).toHex() + ">>> BDC\n";
}

bool hasJoined(const PageTexts& texts) {
  return std::ranges::any_of(texts, hasJoinedLetters, &drawings::LoggedText::text);
}

QByteArray allMarked(const QByteArray& pdf, const std::vector<PageTexts>& pages) {
  PdfObjects objects(pdf);
  const std::vector<qsizetype> contents = objects.pageContents();
  if (contents.size() != pages.size()) return pdf;
  for (std::size_t k = 0; k < pages.size(); ++k) {
    if (hasJoined(pages[k]))
      objects.setStream(contents[k], contentWithTexts(objects.stream(contents[k]), pages[k]));
  }
  return objects.bytes();
}

}  // namespace

bool hasJoinedLetters(const QString& text) {
  const auto is_joined = [](QChar c) {  // Devanagari to Myanmar, Khmer
    return (c >= u'\u0900' && c < u'\u10a0') || (c >= u'\u1780' && c < u'\u1800');
  };
  return std::ranges::any_of(text, is_joined) && !text.isRightToLeft();
}

QByteArray contentWithTexts(const QByteArray& content, const PageTexts& texts) {
  const Reader reader(content);
  QByteArray result;
  qsizetype from = 0;
  auto next = texts.begin();
  for (const Drawn& drawn : reader.texts()) {
    const auto found = std::find_if(next, texts.end(), [&](const drawings::LoggedText& text) {
      return (text.start - drawn.start).manhattanLength() < kSamePlace;
    });
    if (found == texts.end()) continue;
    next = found + 1;
    if (drawn.end == drawn.begin || !hasJoinedLetters(found->text)) continue;
    result += content.sliced(from, drawn.begin - from) + spanOf(found->text);
    result += content.sliced(drawn.begin, drawn.end - drawn.begin) + "EMC\n";
    from = drawn.end;
  }
  return result + content.sliced(from);
}

QByteArray pdfWithTexts(const QByteArray& pdf, const std::vector<PageTexts>& pages) {
  if (std::ranges::none_of(pages, hasJoined)) return pdf;
  try {
    return allMarked(pdf, pages);
  } catch (const std::exception&) {
    return pdf;
  }
}

}  // namespace ui::handouts
