#pragma once

#include "core/base/problem.h"

#include <atomic>
#include <optional>
#include <span>
#include <string_view>

#include <Eigen/Core>

namespace core::site {

/// What makes a spot height doubtful.
struct SurveyLimits {
  double spike_score = 3.5;    ///< modified z-score from which a residual is a spike (iglewicz_hoaglin)
  double least_spike_m = 0.1;  ///< residuals under this are never called a spike (own)
  double far_ratio = 10;       ///< times the median distance from the middle (own)
};

/// Problems of spot heights, at most 100, their path "site.ground.points_m[k]". Codes:
/// - survey_too_few (least), too_many (most), not_finite (path with the coordinate)
/// - survey_collinear: all in one line
/// - survey_conflict: at the place of an earlier point with another height; value the height, allowed the
///   earlier point's path, least and most its height [m]
/// - notes: survey_duplicate: the same point again, allowed the earlier point's path; survey_spike: far off
/// the
///   least-squares plane of its eight nearest neighbours, least and most what would not be called so [m];
///   survey_far: far outside all others, value the distance from the middle, most the limit [m]
/// Spikes: residual against the neighbours' plane over the median absolute deviation of all residuals,
/// 0.6745 |r| / MAD (modified z-score). The worst is taken out before the next is looked for, so that its
/// neighbours are not blamed. @source iglewicz_hoaglin
Problems checkSurvey(std::span<const Eigen::Vector3d> points_m, const SurveyLimits& limits = {},
                     const std::atomic<bool>* cancel = nullptr);

/// Of the above only what keeps a survey from being used; quick. Codes: survey_too_few, too_many, not_finite,
/// survey_collinear, survey_conflict.
Problems surveyFaults(std::span<const Eigen::Vector3d> points_m);

/// Middle of the box around a survey, when a place lies outside that box; nothing when it lies inside, or
/// there are no points.
std::optional<Eigen::Vector2d> placeInSurvey(std::span<const Eigen::Vector3d> points_m,
                                             const Eigen::Vector2d& at_m);

/// True for the codes that only note something: the survey can be used.
bool isSurveyNote(std::string_view code);

}  // namespace core::site
