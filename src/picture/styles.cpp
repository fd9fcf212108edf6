#include "picture/styles.h"

namespace picture {

Styles styles_for(Print print) {
  using list::Weight;
  Styles s;
  if (print == Print::normal) {
    s.body = {12, Weight::regular};
    s.strong = {12, Weight::semibold};
    s.heading = {14.5, Weight::bold};
    s.title = {22, Weight::bold};
    s.head = {12, Weight::regular};
    s.letter = {13, Weight::bold};
    s.number = {8.5, Weight::semibold};
    s.ruler = {7.5, Weight::semibold};
    return s;
  }
  s.body = {18, Weight::regular};
  s.strong = {18, Weight::semibold};
  s.heading = {21, Weight::bold};
  s.title = {28, Weight::bold};
  s.head = {18, Weight::regular};
  s.letter = {18, Weight::bold};
  s.number = {13, Weight::semibold};
  s.ruler = {11, Weight::semibold};
  s.scale_wanted = 6;
  s.scale_least = 4.4;
  s.number_least_pt = 10.5;
  s.key_aside = true;
  s.text_least_mm = 112;
  s.text_most_mm = 190;
  return s;
}

}  // namespace picture
