#pragma once

namespace core {

/// Unit in which core keeps a number. Core itself never converts; ui turns these into what people read.
enum class Unit {
  none,
  metre,
  square_metre,
  cubic_metre,
  litre,
  kilogram,
  percent,
  degree,
  day,
  hour,
  person,
  person_day,
  batter,  ///< horizontal run per unit height [1]
  part,    ///< parts by loose volume [1]
  factor,  ///< dimensionless multiplier [1]
  kg_per_m3,
  litre_per_m3,      ///< litres per cubic metre of mortar
  litre_per_m2_day,  ///< litres per square metre of wetted face per day
  person_day_per_m3,
  person_day_per_m2,
  piece,  ///< things counted: bags, sacks, batches
  millimetre,
  mm_per_day,
  mm_per_metre,  ///< water held in the root zone per metre of depth
  litre_per_minute,
  litre_per_day,  ///< also per head or person and day
  second,
  celsius,
  metre_per_second,
  year,
  bar,          ///< of pressure in a pipe
  mm_per_hour,  ///< rain of a storm
  kilopascal,
  kn_per_m3,  ///< weight of ground
  minute,
  money,        ///< in the project's currency
  kg_per_m2_h,  ///< water evaporating from fresh plaster
};

}  // namespace core
