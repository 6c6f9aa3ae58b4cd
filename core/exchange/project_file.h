#pragma once

#include "core/base/problem.h"
#include "core/project/project.h"

#include <filesystem>
#include <string>
#include <string_view>

#include <tl/expected.hpp>

namespace core::exchange {

/// A project as read, with notes that did not stop it (unknown keys).
struct ReadProject {
  Project project;
  Problems notes;
};

/// Project from the text of a project file, or of a design in short form (core/exchange/short_form.h), or
/// everything wrong with it (all problems, not only the first). Fields, outline, list lengths, cross-field
/// rules are all checked. Never throws.
tl::expected<ReadProject, Problems> parseProject(std::string_view json);

/// Text of a project file: UTF-8, two-space indent, keys in the order of the field table, unknown keys
/// written back.
std::string projectText(const Project& project);

/// Reads a project file; at most 16 MiB.
tl::expected<ReadProject, Problems> readProject(const std::filesystem::path& file);

/// Writes a file whole or not at all: temporary file beside it, flush to disk, rename, flush the folder.
/// @return problems ("cannot_write" with the system's reason in `value`); the old file is then untouched
Problems writeWhole(const std::filesystem::path& file, std::string_view bytes);

/// projectText written by writeWhole.
Problems writeProject(const std::filesystem::path& file, const Project& project);

}  // namespace core::exchange
