#include "ui/handouts/handout.h"

#include "ui/handouts/frame.h"
#include "ui/handouts/page_table.h"
#include "ui/handouts/sheet.h"

#include <QCoreApplication>
#include <algorithm>
#include <deque>
#include <stdexcept>

namespace ui::handouts {
namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(Handouts)
};

struct Page {
  const PageKind* kind;
  PlacedPage blocks;
  FrameText frame;
};

/// Last day of the works.
core::works::Day lastDay(const std::vector<core::works::Task>& tasks) {
  core::works::Day last = tasks.front().finish;
  for (const core::works::Task& task : tasks) {
    if (core::works::isWork(task)) last = std::max(last, task.finish);
  }
  return last;
}

/// Dates of the work and the mark of the design, to tell printed sheets apart.
QString versionOf(const Content& content) {
  const QString mark = Text::tr("Design mark %1").arg(versionMark(content.project));
  QStringList parts;
  if (content.plan.works && !content.plan.works->schedule.empty()) {
    const auto& tasks = content.plan.works->schedule;
    parts << Text::tr("Work %1 to %2")
                 .arg(content.format.date(tasks.front().start), content.format.date(lastDay(tasks)));
  }
  parts << mark;
  const QString author = QString::fromStdString(content.project.prepared_by);
  if (!author.isEmpty()) parts << author;
  return parts.join(QStringLiteral("  |  "));
}

}  // namespace

std::vector<SheetKind> sheetKinds(const Content& content, const QString& language) {
  const InLanguage scope(language);
  std::vector<SheetKind> kinds;
  for (const PageKind& kind : pageKinds()) {
    if (kind.applies(content))
      kinds.push_back({QString::fromLatin1(kind.code), QCoreApplication::translate("Handouts", kind.title)});
  }
  return kinds;
}

struct Handout::Impl {
  Content content;
  QSizeF size_mm;
  QString language, version;
  QStringList cautions;
  std::deque<Sheet> sheets;  // blocks stay where they are
  std::vector<Page> pages;

  Impl(Content c, QSizeF size, QString l) : content(std::move(c)), size_mm(size), language(std::move(l)) {}
  FrameText frameFor(const PageKind& kind) const;
  void addPages(const PageKind& kind);
};

FrameText Handout::Impl::frameFor(const PageKind& kind) const {
  FrameText text;
  text.code = QString::fromLatin1(kind.code);
  text.title = QCoreApplication::translate("Handouts", kind.title);
  text.project = QString::fromStdString(content.project.title);
  text.place = QString::fromStdString(content.project.place);
  if (text.project.isEmpty()) text.project = Text::tr("Farm water tank");
  text.version = version;
  text.stop = kind.construction && isStopped(content);
  if (kind.construction) text.cautions = cautions;
  return text;
}

void Handout::Impl::addPages(const PageKind& kind) {
  FrameText text = frameFor(kind);
  const QRectF area = contentArea(size_mm, text);
  Sheet& sheet = sheets.emplace_back(area.size());
  kind.build(sheet, content);
  const std::vector<PlacedPage> placed = paginate(sheet.blocks(), area.height());
  for (std::size_t k = 0; k < placed.size(); ++k) {
    if (placed.size() > 1) text.code = QStringLiteral("%1.%2").arg(QLatin1String(kind.code)).arg(k + 1);
    pages.push_back({&kind, placed[k], text});
  }
}

Handout::Handout(Content content, Options options)
    : impl_(std::make_unique<Impl>(std::move(content), QPageSize(options.page).size(QPageSize::Millimeter),
                                   options.language)) {
  const InLanguage scope(options.language);
  impl_->version = versionOf(impl_->content);
  impl_->cautions = cautionLines(overrideText(impl_->content), impl_->size_mm, impl_->content.format);
  for (const PageKind& kind : pageKinds()) {
    const bool is_wanted = options.codes.isEmpty() || options.codes.contains(QLatin1String(kind.code));
    if (is_wanted && kind.applies(impl_->content)) impl_->addPages(kind);
  }
  int number = 0;
  for (Page& page : impl_->pages) {
    page.frame.page = ++number;
    page.frame.pages = pageCount();
  }
}

Handout::~Handout() = default;
Handout::Handout(Handout&&) noexcept = default;
Handout& Handout::operator=(Handout&&) noexcept = default;

int Handout::pageCount() const {
  return static_cast<int>(impl_->pages.size());
}

QString Handout::pageTitle(int page) const {
  const FrameText& text = impl_->pages.at(static_cast<std::size_t>(page)).frame;
  return text.code + QStringLiteral("  ") + text.title;
}

QString Handout::pageCode(int page) const {
  return QString::fromLatin1(impl_->pages.at(static_cast<std::size_t>(page)).kind->code);
}

QSizeF Handout::pageSize_mm() const {
  return impl_->size_mm;
}

void Handout::paint(QPainter& painter, int page) const {
  const InLanguage scope(impl_->language);
  const Page& p = impl_->pages.at(static_cast<std::size_t>(page));
  painter.save();
  mirrorFor(painter, impl_->size_mm.width());
  paintFrame(painter, impl_->size_mm, p.frame, impl_->content.format.locale());
  const QRectF area = contentArea(impl_->size_mm, p.frame);
  for (const Placed& placed : p.blocks) {
    painter.save();
    placed.block->paint(painter, area.topLeft() + QPointF(0, placed.y_mm));
    painter.restore();
  }
  painter.restore();
}

}  // namespace ui::handouts
