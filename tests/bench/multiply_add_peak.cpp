#include "tests/bench/multiply_add_peak.h"

#define HWY_DISABLED_TARGETS (HWY_SVE | HWY_SVE2 | HWY_SVE_256 | HWY_SVE2_128 | HWY_RVV)
#undef HWY_TARGET_INCLUDE
#define HWY_TARGET_INCLUDE "tests/bench/multiply_add_peak.cpp"
#include <hwy/foreach_target.h>
#include <hwy/highway.h>

HWY_BEFORE_NAMESPACE();
namespace bench::HWY_NAMESPACE {
namespace {

namespace hn = hwy::HWY_NAMESPACE;

// Ten chains: enough for two units that take five cycles each, and they stay in registers.
double chains(long rounds) {
  const hn::ScalableTag<float> d;
  const auto factor = hn::Set(d, 0.999F), add = hn::Set(d, 0.001F);
  auto a = hn::Set(d, 0.0F), b = hn::Set(d, 0.1F), c = hn::Set(d, 0.2F), e = hn::Set(d, 0.3F),
       f = hn::Set(d, 0.4F), g = hn::Set(d, 0.5F), h = hn::Set(d, 0.6F), i = hn::Set(d, 0.7F),
       j = hn::Set(d, 0.8F), k = hn::Set(d, 0.9F);
  for (long round = 0; round < rounds; ++round) {
    a = hn::MulAdd(a, factor, add), b = hn::MulAdd(b, factor, add), c = hn::MulAdd(c, factor, add);
    e = hn::MulAdd(e, factor, add), f = hn::MulAdd(f, factor, add), g = hn::MulAdd(g, factor, add);
    h = hn::MulAdd(h, factor, add), i = hn::MulAdd(i, factor, add), j = hn::MulAdd(j, factor, add);
    k = hn::MulAdd(k, factor, add);
  }
  const auto sum = hn::Add(
      hn::Add(hn::Add(hn::Add(a, b), hn::Add(c, e)), hn::Add(hn::Add(f, g), hn::Add(h, i))), hn::Add(j, k));
  const double used = hn::GetLane(sum) > 1e9F ? 1 : 0;  // never: the sum must be reckoned
  return 10.0 * static_cast<double>(rounds) * static_cast<double>(hn::Lanes(d)) + used;
}

}  // namespace
}  // namespace bench::HWY_NAMESPACE
HWY_AFTER_NAMESPACE();

#if HWY_ONCE
namespace bench {

HWY_EXPORT(chains);

double multiplyAdds(long rounds) {
  return HWY_DYNAMIC_DISPATCH(chains)(rounds);
}

}  // namespace bench
#endif
