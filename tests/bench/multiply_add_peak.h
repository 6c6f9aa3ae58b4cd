#pragma once

namespace bench {

/// Runs `rounds` rounds of independent single-precision multiply-adds at the full width of the instructions
/// that hwy dispatches to now.
/// @return multiply-adds done
double multiplyAdds(long rounds);

}  // namespace bench
