#pragma once

#include "core/project/fields.h"
#include "ui/window/main_window.h"

#include <QString>
#include <QWidget>
#include <functional>
#include <memory>
#include <string>

namespace window_test {

/// A window with the example, on the screen, whose settings and recovery files lie in a folder of this test
/// program.
std::unique_ptr<ui::MainWindow> makeWindow();

/// Folder for settings and recovery files, told to Qt once.
QString home();

/// Turns the event loop until a condition holds, at most `limit_ms`; whether it held.
bool waitFor(const std::function<bool()>& condition, int limit_ms = 10000);

/// The control of that name. Fails the test when there is none.
template <class Widget = QWidget>
Widget& control(QWidget& window, const QString& name);

/// Replaces what stands in a text editor, key by key.
void type(QWidget& editor, const QString& text);

/// The project file's text.
std::string bytes(const ui::MainWindow& window);
std::string bytes(const core::Project& project);

void undoAll(ui::MainWindow& window);
void redoAll(ui::MainWindow& window);

/// Presses a button of the next message box that opens.
void answerNextBox(int button);

}  // namespace window_test

#include <catch2/catch.hpp>

template <class Widget>
Widget& window_test::control(QWidget& window, const QString& name) {
  auto* found = window.findChild<Widget*>(name);
  INFO(name.toStdString());
  REQUIRE(found != nullptr);
  return *found;
}
