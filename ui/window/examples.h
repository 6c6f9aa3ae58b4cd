#pragma once

#include "core/project/project.h"

namespace ui {

/// The example that comes with the program: an invented place.
core::Project exampleProject();

/// A project to begin with: the defaults, digging from today.
core::Project newProject();

}  // namespace ui
