// From holes of the cloth to millimetres of a picture. For the left hand x runs the other way; nothing else is mirrored.
#pragma once

#include "cloth/hole.h"
#include "picture/geometry.h"
#include "say/say.h"

namespace picture {

/// A piece of the cloth in a picture whose upper left corner is (0, 0). Half a thread is left free round the outermost holes.
struct View {
  cloth::Box window;
  double scale = 4;  ///< mm a thread
  bool mirrored = false;

  double width() const { return (window.width() + 1) * scale; }
  double height() const { return (window.height() + 1) * scale; }
  Rect rect() const { return {0, 0, width(), height()}; }
  /// Of a place given in threads (holes are whole numbers).
  Point at(double x, double y) const {
    const double across = mirrored ? window.x1 - x : x - window.x0;
    return {(across + 0.5) * scale, (y - window.y0 + 0.5) * scale};
  }
  Point at(cloth::Hole h) const { return at(static_cast<double>(h.x), static_cast<double>(h.y)); }
  Capsule capsule(const cloth::Stitch& s, double radius) const { return {at(s.a), at(s.b), radius}; }
};

inline View view_of(const cloth::Box& window, double scale, say::Hand hand) { return {window, scale, hand == say::Hand::left}; }

}  // namespace picture
