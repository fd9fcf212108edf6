// Every setting of a course with its default, in one place. What the user sets for herself (theme, window) is not here.
#pragma once

#include <map>
#include <string>
#include <vector>

namespace course {

enum class Hand { right, left, both };
enum class Paper { a4, letter };
enum class Line { thread, hole };      ///< what a line of the printed grid stands for
enum class Begin { middle, edges };    ///< where the first count of the course starts
enum class EdgeWhen { before_cutting, after_cutting };
enum class Pace { practised, beginner };
enum class EyeletNeedle { down_in_the_middle, up_in_the_middle };

/// Seconds of care a count asks for; the weights are ours and can be set. They rest on counting by eye: up to 4 things are seen at
/// a glance, each further one is counted (Trick and Pylyshyn 1994).
struct CountCost {
  double glance = 0.07;         ///< s a thread, up to `glance_to`
  int glance_to = 4;
  double each = 0.3;            ///< s a thread beyond
  double second_leg = 1.0;      ///< s for a turn in the count
  double under_stitches = 0.5;  ///< s for each thread counted where a stitch lies over it
  double plain_landmark = 1.5;  ///< s for a landmark that does not stand out (neither extreme nor a corner)
};

struct Habits {
  double working_length_cm = 50;
  double tail_cm = 8;
  double first_tail_cm = 12;
  double take_up = 0.06;  ///< thread length over path length, less one
  double waste = 0.10;
  double back_limit = 12;  ///< threads
  std::map<std::string, double> length_cm;           ///< by kind, where it differs from working_length_cm
  std::map<std::string, double> stitches_a_minute;   ///< by kind, where the teacher set it
  Pace pace = Pace::practised;                       ///< of the class: which of the assumed speeds hold
  std::map<std::string, double> assumed_speeds;      ///< by kind, from the table in assets/, for this pace
  double class_share = 0.6;                          ///< of a class's minutes: the share in which students stitch
  double prepare_minutes = 0;  ///< of the first lesson, for the cloth; 0: at home before it
  double wash_minutes = 20;  ///< of a lesson: washed, squared up and pressed; an assumption, no source
  EdgeWhen edge = EdgeWhen::before_cutting;
  EyeletNeedle eyelet_needle = EyeletNeedle::down_in_the_middle;
  CountCost count_cost;
};

struct Choices {
  Hand hand = Hand::right;
  Paper paper = Paper::a4;
  Line line = Line::thread;
  Begin begin = Begin::middle;
  std::string language = "en";
  Habits habits;
};

}  // namespace course
