#pragma once

#include "core/base/problem.h"
#include "core/exchange/json_reader.h"
#include "core/project/project.h"

#include <vector>

namespace core::exchange {

/// Keys of a project file that no field and no list of this version reads.
struct UnknownKeys {
  std::vector<KeptKey> kept;  ///< in the order of the pointers
  Problems notes;             ///< unknown_key for each of them, in the order of the file
};

/// @param root the whole file, or some sections of it
UnknownKeys unknownKeys(const Json& root);

}  // namespace core::exchange
