#include "app/command_line.h"
#include "app/commands.h"
#include "app/streams.h"

#include <QtGlobal>

int main(int argc, char** argv) {
  if (!qEnvironmentVariableIsSet("QT3D_RENDERER")) qputenv("QT3D_RENDERER", "opengl");
  app::guardStandardStreams();
  const auto request = app::readCommandLine(argc, argv);
  if (!request) return request.error();
  if (request->command == app::Command::window) return app::openWindow(*request, argc, argv);
  return app::runCommand(*request, argc, argv);
}
