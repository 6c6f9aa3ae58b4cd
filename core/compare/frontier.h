#pragma once

#include "core/compare/search.h"

#include <functional>
#include <vector>

namespace core::compare {

/// A size within all limits: what it costs, and between which numbers that lies what it gives.
struct Offer {
  Candidate size;
  double price = 0;  ///< money, or bags of cement
  double least_gain = 0, most_gain = 0;
};

/// Cheaper first; of equal ones the larger, then the shorter, narrower and shallower.
bool comesBefore(const Offer& a, const Offer& b);

/// Puts in order and leaves out each offer that another one before it is sure to match. What is left does not
/// depend on how many offers were thinned together before.
void thin(std::vector<Offer>& offers);

/// Puts one more into offers that are thinned, and thins them again.
void insert(std::vector<Offer>& offers, const Offer& more);

/// True when one of the offers comes before another and is sure to give as much.
bool isMatched(const Offer& offer, const std::vector<Offer>& by);

/// Offers that give more than every cheaper one, rising; of those at one price only the best.
/// @param offers thinned
/// @param gain_of what a size gives; asked for where the bounds leave it open. Nothing: give up
using GainOf = std::function<double(const Candidate&)>;
std::vector<Offer> frontierOf(const std::vector<Offer>& offers, const GainOf& gain_of);

}  // namespace core::compare
