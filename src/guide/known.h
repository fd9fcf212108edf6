// What OnCloth holds: the parts' work as far as it is known, its landmarks by place and time, and the cloth's own landmarks.
#pragma once

#include "guide/care.h"
#include "guide/counts.h"
#include "guide/hidden.h"
#include "guide/landmarks.h"
#include "guide/layers.h"
#include "guide/near.h"
#include "guide/worked.h"

namespace guide {

struct Known {
  explicit Known(const course::Course& of);
  void add(const PlacedTrail& trail);

  const course::Course& course;  ///< must outlive it
  Costs costs;
  cloth::Hole middle, corner;  ///< of the cloth
  Worked worked;
  Landmarks landmarks;
  Hidden hidden;
  Layers<Near> near;
};

}  // namespace guide
