#pragma once

#include "core/exchange/json_reader.h"
#include "core/exchange/project_file.h"

#include <string_view>

namespace core::exchange {

/// A project as the JSON of its file.
Json projectJson(const Project& project);

/// Project from the JSON of its file, or everything wrong with it; see parseProject.
tl::expected<ReadProject, Problems> projectFrom(const Json& root);

/// What is wrong with the head of a file: `code` when it is no object or of another format, missing or
/// unknown_version for its version.
Problems checkFormat(const Json& root, std::string_view format, std::string_view code);

}  // namespace core::exchange
