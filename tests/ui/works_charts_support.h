#pragma once

#include "core/works/schedule.h"

#include <QString>
#include <QTranslator>

namespace support {

/// Invented works of five weeks from Monday 15 February 2027 with Saturdays off, so that what is drawn can be
/// told from what is computed.
core::works::Works sampleWorks(int fill_days = 9);

/// A first filling from 20 March on, so many days long.
core::works::Filling sampleFilling(int days);

/// Weather in which coats stay undisturbed in winter and fail in the rains; the planned week is in June.
core::works::WeatherWindow sampleWindow();

/// Says everything at length, or in Hebrew letters, as a translation might.
class Wordy : public QTranslator {
public:
  explicit Wordy(bool right_to_left) : right_to_left_(right_to_left) {}
  bool isEmpty() const override { return false; }
  QString translate(const char* context, const char* source, const char* comment, int count) const override;

private:
  bool right_to_left_;
};

}  // namespace support
