#define CATCH_CONFIG_RUNNER
#include <QApplication>

#include <catch2/catch.hpp>

int main(int argc, char** argv) {
  if (!qEnvironmentVariableIsSet("QT3D_RENDERER")) qputenv("QT3D_RENDERER", "opengl");
  const QApplication application(argc, argv);
  return Catch::Session().run(argc, argv);
}
