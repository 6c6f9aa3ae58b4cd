#pragma once

#include <sys/resource.h>

/// Most memory this process has held [MiB].
inline double peakMemory_MiB() {
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  return static_cast<double>(usage.ru_maxrss) / 1024;
}
