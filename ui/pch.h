#pragma once

// Precompiled: heavy headers that most of ui uses.
#include <optional>
#include <string>
#include <vector>

#include <Eigen/Core>
#include <QObject>
#include <QPainter>
#include <QString>
