#include "core/site/delaunay.h"

#include <csetjmp>
#include <cstddef>
#include <cstdio>
#include <memory>
#include <string>

extern "C" {
#include <libqhull_r/qhull_ra.h>
}

namespace core::site {
namespace {

constexpr int kPointsBetweenLooks = 256;

bool isCancelled(const std::atomic<bool>* cancel) {
  return cancel && cancel->load(std::memory_order_relaxed);
}

/// Adds the points one after another, as Qhull's own loop does. @return false when cancelled
bool addPoints(qhT* qh, const std::atomic<bool>* cancel) {
  facetT* facet = nullptr;
  int added = 0;
  while (pointT* point = qh_nextfurthest(qh, &facet)) {
    if (++added % kPointsBetweenLooks == 0 && isCancelled(cancel)) return false;
    qh->num_outside--;
    if (!qh_addpoint(qh, point, facet, qh->ONLYmax)) return true;
  }
  return true;
}

void addFace(qhT* qh, facetT* facet, unsigned points, DelaunayFaces& out) {
  std::uint32_t size = 0;
  vertexT* vertex = nullptr;
  vertexT** vertexp = nullptr;
  FOREACHvertex_(facet->vertices) {
    const int id = qh_pointid(qh, vertex->point);
    if (id < 0 || static_cast<unsigned>(id) >= points) continue;  // the point at infinity
    out.corners.push_back(static_cast<std::uint32_t>(id));
    ++size;
  }
  out.size.push_back(size);
}

/// Everything between Qhull's jumps; holds nothing that a jump would leave behind.
DelaunayResult build(qhT* qh, std::vector<double>& xy, char* options, const std::atomic<bool>* cancel,
                     DelaunayFaces& out) {
  if (setjmp(qh->errexit) != 0) return DelaunayResult::failed;
  qh->NOerrexit = False;
  qh_initflags(qh, options);
  qh->PROJECTdelaunay = True;
  qh_init_B(qh, xy.data(), static_cast<int>(xy.size() / 2), 2, False);
  qh_initbuild(qh);
  if (isCancelled(cancel) || !addPoints(qh, cancel)) return DelaunayResult::cancelled;
  facetT* facet = nullptr;
  FORALLfacets {
    if (!facet->upperdelaunay) addFace(qh, facet, static_cast<unsigned>(xy.size() / 2), out);
  }
  return DelaunayResult::done;
}

}  // namespace

DelaunayResult delaunay(std::vector<double>& xy, const char* options, const std::atomic<bool>* cancel,
                        DelaunayFaces& out) {
  // Qhull ends the program when it has a fault to tell and nowhere to write it
  const std::unique_ptr<std::FILE, int (*)(std::FILE*)> messages(std::tmpfile(), &std::fclose);
  if (!messages) return DelaunayResult::failed;
  std::string command(options);
  qhT memory;
  qhT* qh = &memory;
  qh_zero(qh, messages.get());
  qh_init_A(qh, nullptr, nullptr, messages.get(), 0, nullptr);
  out = {};
  const DelaunayResult result = build(qh, xy, command.data(), cancel, out);
  qh->NOerrexit = True;
  qh_freeqhull(qh, !qh_ALL);
  int long_blocks = 0;
  int long_bytes = 0;
  qh_memfreeshort(qh, &long_blocks, &long_bytes);
  return result;
}

}  // namespace core::site
