#pragma once

#include <QByteArray>
#include <vector>

namespace ui::handouts {

/// The objects of a PDF as QPdfWriter writes it: one table of places, contents of pages deflated, each with
/// its length in an object of its own.
/// All that read it @throw std::exception where the PDF is written otherwise.
class PdfObjects {
public:
  explicit PdfObjects(const QByteArray& pdf);

  /// Numbers of the objects with the content of each page, in the order of the pages.
  std::vector<qsizetype> pageContents() const;
  QByteArray stream(qsizetype number) const;  ///< inflated
  void setStream(qsizetype number, const QByteArray& content);
  /// The PDF with the changes made.
  QByteArray bytes() const;

private:
  struct Stream {
    qsizetype begin, length;  ///< of its bytes in the object
    qsizetype length_object;  ///< number of the object that holds the length
  };
  Stream streamOf(qsizetype number) const;
  const QByteArray& object(qsizetype number) const;

  QByteArray head_, trailer_;
  std::vector<QByteArray> objects_;  ///< by number; empty where there is none
  std::vector<qsizetype> order_;     ///< numbers as they stand in the file
};

}  // namespace ui::handouts
