#include "core/compare/frontier.h"

#include <algorithm>
#include <limits>
#include <tuple>

namespace core::compare {
namespace {

constexpr double kNothing = -std::numeric_limits<double>::infinity();

/// From offers in order.
void dropMatched(std::vector<Offer>& offers) {
  double sure = kNothing;
  std::erase_if(offers, [&](const Offer& offer) {
    if (offer.most_gain <= sure) return true;
    sure = std::max(sure, offer.least_gain);
    return false;
  });
}

}  // namespace

bool comesBefore(const Offer& a, const Offer& b) {
  const auto key = [](const Offer& o) {
    return std::tuple(o.price, -o.size.full_volume_m3, o.size.length_m, o.size.width_m, o.size.depth_m);
  };
  return key(a) < key(b);
}

void thin(std::vector<Offer>& offers) {
  std::sort(offers.begin(), offers.end(), comesBefore);
  dropMatched(offers);
}

void insert(std::vector<Offer>& offers, const Offer& more) {
  offers.insert(std::lower_bound(offers.begin(), offers.end(), more, comesBefore), more);
  dropMatched(offers);
}

bool isMatched(const Offer& offer, const std::vector<Offer>& by) {
  return std::any_of(by.begin(), by.end(), [&](const Offer& other) {
    return other.least_gain >= offer.most_gain && comesBefore(other, offer);
  });
}

std::vector<Offer> frontierOf(const std::vector<Offer>& offers, const GainOf& gain_of) {
  std::vector<Offer> frontier;
  double best = kNothing;
  for (Offer offer : offers) {
    if (offer.most_gain <= best) continue;
    if (offer.least_gain < offer.most_gain) offer.least_gain = offer.most_gain = gain_of(offer.size);
    if (offer.most_gain <= best) continue;
    best = offer.most_gain;
    if (!frontier.empty() && frontier.back().price == offer.price) frontier.pop_back();
    frontier.push_back(offer);
  }
  return frontier;
}

}  // namespace core::compare
