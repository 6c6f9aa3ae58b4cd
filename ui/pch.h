#pragma once

// Precompiled: heavy headers that most of ui uses.
#include <QObject>
#include <QPainter>
#include <QString>
#include <optional>
#include <string>
#include <vector>

#include <Eigen/Core>
