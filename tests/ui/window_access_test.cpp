#include "ui/group/group_view.h"
#include "ui/view3d/pit_view.h"
#include "window_support.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAbstractSlider>
#include <QAccessible>
#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QImage>
#include <QLineEdit>
#include <QScrollArea>
#include <QTabBar>
#include <QTabWidget>
#include <QTest>
#include <QToolBar>
#include <set>
#include <vector>

// What a screen reader and a keyboard find, through Qt's own accessibility tree.

using namespace window_test;

namespace {

/// Roles of what a person can do something with.
bool isControl(QAccessible::Role role) {
  static const std::set<QAccessible::Role> roles{
      QAccessible::PushButton, QAccessible::CheckBox, QAccessible::RadioButton,  QAccessible::ComboBox,
      QAccessible::Slider,     QAccessible::SpinBox,  QAccessible::EditableText, QAccessible::Table,
      QAccessible::List,       QAccessible::Tree,     QAccessible::ButtonMenu,   QAccessible::PageTab,
      QAccessible::MenuItem,   QAccessible::ScrollBar};
  return roles.count(role) > 0;
}

QString pathOf(const QAccessibleInterface& item) {
  QStringList names;
  for (const QObject* o = item.object(); o != nullptr; o = o->parent()) {
    if (!o->objectName().isEmpty()) names.prepend(o->objectName());
  }
  return names.join(QLatin1Char('/'));
}

/// Controls without a name, and things that take the focus but have no role, below an item.
void addFaults(QStringList& faults, QAccessibleInterface* item, int& controls) {
  if (item == nullptr || !item->isValid() || item->state().invisible) return;
  const QAccessible::Role role = item->role();
  const bool in_cell = role == QAccessible::Cell || role == QAccessible::ListItem;
  if (isControl(role) && role != QAccessible::ScrollBar) {
    ++controls;
    if (item->text(QAccessible::Name).trimmed().isEmpty())
      faults << QStringLiteral("no name: role %1 at %2").arg(int(role)).arg(pathOf(*item));
  }
  // what hands the focus on to another does not keep it
  const bool bare = role == QAccessible::NoRole || role == QAccessible::Client || role == QAccessible::Pane;
  const auto* widget = qobject_cast<const QWidget*>(item->object());
  if (bare && item->state().focusable && widget != nullptr &&
      qobject_cast<const QAbstractScrollArea*>(widget) == nullptr && widget->focusProxy() == nullptr &&
      item->text(QAccessible::Name).trimmed().isEmpty())
    faults << QStringLiteral("takes the focus without role or name: %1").arg(pathOf(*item));
  if (in_cell) return;
  for (int k = 0; k < item->childCount(); ++k) addFaults(faults, item->child(k), controls);
}

/// What a key must be able to reach: enabled and visible buttons, editors, sliders, lists.
std::vector<QWidget*> handled(QWidget& window) {
  std::vector<QWidget*> found;
  for (QWidget* w : window.findChildren<QWidget*>()) {
    if (!w->isVisible() || !w->isEnabled() || w->window() != &window) continue;
    const bool is_inner = qobject_cast<QLineEdit*>(w) != nullptr && w->focusProxy() == nullptr &&
                          (qobject_cast<QComboBox*>(w->parent()) != nullptr ||
                           w->objectName() == QLatin1String("qt_spinbox_lineedit"));
    if (is_inner || qobject_cast<QToolBar*>(w->parent()) != nullptr) continue;  // tool bar: all are in menus
    if (qobject_cast<QTabBar*>(w->parent()) != nullptr) continue;               // its scroll buttons
    const bool is_scroll_bar = w->inherits("QScrollBar");
    const bool does = qobject_cast<QAbstractButton*>(w) != nullptr ||
                      qobject_cast<QComboBox*>(w) != nullptr || qobject_cast<QLineEdit*>(w) != nullptr ||
                      qobject_cast<QAbstractSlider*>(w) != nullptr ||
                      qobject_cast<QAbstractItemView*>(w) != nullptr || qobject_cast<QTabBar*>(w) != nullptr;
    if (does && !is_scroll_bar && !w->inherits("QHeaderView") && !w->inherits("QTableCornerButton"))
      found.push_back(w);
  }
  return found;
}

/// Share of a widget's pixels that differ.
double changed(const QImage& a, const QImage& b) {
  if (a.size() != b.size()) return 1;
  int other = 0;
  for (int y = 0; y < a.height(); ++y)
    for (int x = 0; x < a.width(); ++x) other += a.pixel(x, y) != b.pixel(x, y);
  return double(other) / std::max(1, a.width() * a.height());
}

/// Calls with each tab, and each page within it, in view.
void forEachTab(ui::MainWindow& window, const std::function<void(const QString&)>& with) {
  auto& tabs = control<QTabWidget>(window, QStringLiteral("tabs"));
  for (int k = 0; k < tabs.count(); ++k) {
    tabs.setCurrentIndex(k);
    QApplication::processEvents();
    auto* pages = tabs.currentWidget()->findChild<QTabBar*>();
    for (int p = 0; p < (pages == nullptr ? 1 : pages->count()); ++p) {
      if (pages != nullptr) pages->setCurrentIndex(p);
      QApplication::processEvents();
      with(QStringLiteral("%1, page %2").arg(tabs.tabText(k)).arg(p + 1));
    }
  }
}

}  // namespace

TEST_CASE("Every control has a role and a name for a screen reader, on every page") {
  const auto window = makeWindow();
  forEachTab(*window, [&](const QString& page) {
    QStringList faults;
    int controls = 0;
    addFaults(faults, QAccessible::queryAccessibleInterface(window.get()), controls);
    faults.removeDuplicates();
    INFO(page.toStdString() << ":\n" << faults.join(QLatin1Char('\n')).toStdString());
    CHECK(faults.isEmpty());
    CHECK(controls > 40);
  });
}

TEST_CASE("Every control of the group view has a role and a name") {
  const auto window = makeWindow();
  window->findChild<QAction*>(QStringLiteral("view.group"))->trigger();
  auto& view = control<ui::group::GroupView>(*window, QStringLiteral("group_view"));
  REQUIRE(waitFor([&] { return view.isVisible(); }));
  for (const auto mode : {ui::group::GroupView::Mode::size, ui::group::GroupView::Mode::options,
                          ui::group::GroupView::Mode::building, ui::group::GroupView::Mode::year}) {
    view.setMode(mode);
    QStringList faults;
    int controls = 0;
    addFaults(faults, QAccessible::queryAccessibleInterface(&view), controls);
    INFO(faults.join(QLatin1Char('\n')).toStdString());
    CHECK(faults.isEmpty());
    CHECK(controls >= 5);
  }
}

TEST_CASE("Tab reaches every control of every page") {
  const auto window = makeWindow();
  forEachTab(*window, [&](const QString& page) {
    std::set<const QWidget*> chain;
    for (QWidget* w = window->nextInFocusChain(); w != window.get(); w = w->nextInFocusChain()) {
      if ((w->focusPolicy() & Qt::TabFocus) != 0) chain.insert(w);
      if (w->focusProxy() != nullptr) chain.insert(w->focusProxy());
    }
    for (QWidget* w : handled(*window)) {
      INFO(page.toStdString() << ": " << w->metaObject()->className() << " " << w->objectName().toStdString()
                              << " in " << w->parent()->objectName().toStdString());
      CHECK(chain.count(w) == 1);
    }
  });
}

TEST_CASE("What has the focus looks different from what has not") {
  const auto window = makeWindow();
  window->setAttribute(Qt::WA_KeyboardFocusChange);  // as after the first press of Tab
  window->activateWindow();
  REQUIRE(waitFor([&] { return window->isActiveWindow(); }));
  forEachTab(*window, [&](const QString& page) {
    std::set<QByteArray> seen;  // one of each kind on each page
    for (QWidget* w : handled(*window)) {
      if ((w->focusPolicy() & Qt::TabFocus) == 0 || w->visibleRegion().isEmpty()) continue;
      const auto* list = qobject_cast<const QAbstractItemView*>(w);
      if (list != nullptr && list->model()->rowCount() == 0) continue;  // nothing in it to be at
      if (!seen.insert(w->metaObject()->className()).second) continue;
      w->clearFocus();
      QApplication::processEvents();
      const QImage before = w->grab().toImage();
      w->setFocus(Qt::TabFocusReason);
      QApplication::processEvents();
      INFO(page.toStdString() << ": " << w->metaObject()->className() << " "
                              << w->objectName().toStdString());
      if (!w->hasFocus()) continue;
      CHECK(changed(before, w->grab().toImage()) > 0);
    }
    CHECK(seen.size() >= 4);
  });
}
