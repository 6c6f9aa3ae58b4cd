#include "ui/handouts/pdf_objects.h"

#include <QByteArrayList>
#include <QtEndian>
#include <algorithm>
#include <stdexcept>

namespace ui::handouts {
namespace {

constexpr qsizetype kPlace = 20;     // bytes of an entry of the table, ISO 32000-1, 7.5.4
constexpr qsizetype kMostTimes = 8;  // pages are seldom deflated to less than an eighth

void require(bool is_so) {
  if (!is_so) throw std::runtime_error("a PDF in an unknown form");
}

/// Behind the first `key` after `from`.
qsizetype behind(const QByteArray& text, const QByteArray& key, qsizetype from = 0) {
  const qsizetype at = text.indexOf(key, from);
  require(at >= 0);
  return at + key.size();
}

/// The whole number that stands at a place.
qsizetype numberAt(const QByteArray& text, qsizetype at) {
  qsizetype end = at;
  while (end < text.size() && text[end] >= '0' && text[end] <= '9') ++end;
  bool is_number = false;
  const qsizetype number = text.mid(at, end - at).toInt(&is_number);
  require(is_number);
  return number;
}

qsizetype numberAfter(const QByteArray& text, const QByteArray& key) {
  return numberAt(text, behind(text, key));
}

QByteArray headOf(qsizetype number) {
  return QByteArray::number(number) + " 0 obj\n";
}

QByteArray place(qsizetype at) {
  return QByteArray::number(at).rightJustified(10, '0') + " 00000 n \n";
}

struct Place {
  qsizetype at, number;
};

/// The entries of the table of places, as their objects follow each other in the file.
std::vector<Place> placesIn(const QByteArray& table, qsizetype count) {
  std::vector<Place> places;
  const qsizetype first = behind(table, "\n", behind(table, "xref\n"));
  require(table.size() >= first + count * kPlace);
  for (qsizetype number = 0; number < count; ++number) {
    const QByteArray entry = table.mid(first + number * kPlace, kPlace);
    if (entry.endsWith(" 00000 n \n")) places.push_back({numberAt(entry, 0), number});
  }
  require(!places.empty());
  std::ranges::sort(places, {}, &Place::at);
  return places;
}

/// The numbers of a list "[", "6 0 R", "15 0 R", "]" that follows a key.
std::vector<qsizetype> listAfter(const QByteArray& text, const QByteArray& key) {
  const qsizetype begin = behind(text, "[\n", behind(text, key));
  const qsizetype end = behind(text, "]", begin) - 1;
  std::vector<qsizetype> numbers;
  for (const QByteArray& line : text.mid(begin, end - begin).split('\n')) {
    if (!line.trimmed().isEmpty()) numbers.push_back(numberAt(line, 0));
  }
  return numbers;
}

}  // namespace

PdfObjects::PdfObjects(const QByteArray& pdf) {
  const qsizetype start = numberAt(pdf, pdf.lastIndexOf("startxref\n") + 10);
  const QByteArray table = pdf.mid(start);
  require(table.startsWith("xref\n0 "));
  const qsizetype count = numberAfter(table, "xref\n0 ");
  const std::vector<Place> places = placesIn(table, count);
  head_ = pdf.left(places.front().at);
  objects_.resize(static_cast<std::size_t>(count));
  for (std::size_t k = 0; k < places.size(); ++k) {
    const auto [at, number] = places[k];
    const qsizetype end = k + 1 < places.size() ? places[k + 1].at : start;
    objects_[static_cast<std::size_t>(number)] = pdf.mid(at, end - at);
    require(object(number).startsWith(headOf(number)) && object(number).endsWith("\nendobj\n"));
    order_.push_back(number);
  }
  const qsizetype tail = behind(table, "trailer\n") - 8;
  trailer_ = table.mid(tail, behind(table, "startxref\n", tail) - tail);
}

const QByteArray& PdfObjects::object(qsizetype number) const {
  return objects_.at(static_cast<std::size_t>(number));
}

std::vector<qsizetype> PdfObjects::pageContents() const {
  const auto tree = std::ranges::find_if(
      objects_, [](const QByteArray& each) { return each.left(40).contains("/Type /Pages\n"); });
  require(tree != objects_.end());
  std::vector<qsizetype> contents;
  for (const qsizetype page : listAfter(*tree, "/Kids")) {
    require(object(page).contains("/Type /Page\n"));
    contents.push_back(numberAfter(object(page), "/Contents "));
  }
  return contents;
}

PdfObjects::Stream PdfObjects::streamOf(qsizetype number) const {
  const QByteArray& all = object(number);
  const qsizetype begin = behind(all, ">>\nstream\n");
  require(all.left(begin).contains("/Filter /FlateDecode\n"));
  const qsizetype length_object = numberAfter(all, "/Length ");
  require(all.left(begin).contains("/Length " + QByteArray::number(length_object) + " 0 R\n"));
  const qsizetype length = numberAfter(object(length_object), headOf(length_object));
  require(all.mid(begin + length).startsWith("\nendstream\n"));
  return {begin, length, length_object};
}

QByteArray PdfObjects::stream(qsizetype number) const {
  const Stream stream = streamOf(number);
  QByteArray sized(4, '\0');
  qToBigEndian(static_cast<quint32>(kMostTimes * stream.length), sized.data());
  const QByteArray content = qUncompress(sized + object(number).mid(stream.begin, stream.length));
  require(!content.isEmpty());
  return content;
}

void PdfObjects::setStream(qsizetype number, const QByteArray& content) {
  const Stream old = streamOf(number);
  const QByteArray deflated = qCompress(content).sliced(4);  // the size stands before what zlib makes
  objects_[static_cast<std::size_t>(number)].replace(old.begin, old.length, deflated);
  objects_[static_cast<std::size_t>(old.length_object)] =
      headOf(old.length_object) + QByteArray::number(deflated.size()) + "\nendobj\n";
}

QByteArray PdfObjects::bytes() const {
  QByteArray all = head_;
  QByteArrayList places(static_cast<qsizetype>(objects_.size()), "0000000000 65535 f \n");
  for (const qsizetype number : order_) {
    places[number] = place(all.size());
    all += object(number);
  }
  const QByteArray start = QByteArray::number(all.size());
  all += "xref\n0 " + QByteArray::number(places.size()) + '\n' + places.join();
  return all + trailer_ + start + "\n%%EOF\n";
}

}  // namespace ui::handouts
