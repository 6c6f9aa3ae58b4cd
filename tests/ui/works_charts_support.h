#pragma once

#include "core/works/schedule.h"

namespace support {

/// Invented works of five weeks from Monday 15 February 2027 with Saturdays off, so that what is drawn can be
/// told from what is computed.
core::works::Works sampleWorks(int fill_days = 9);

/// A first filling from 20 March on, so many days long.
core::works::Filling sampleFilling(int days);

/// Weather in which coats stay undisturbed in winter and fail in the rains; the planned week is in June.
core::works::WeatherWindow sampleWindow();

}  // namespace support
