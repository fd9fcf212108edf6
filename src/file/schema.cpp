#include "file/schema.h"

namespace file {
Keys root_keys() { return {"format", "course", "cloth", "thread", "habits", "part", "lesson", "student"}; }

Keys course_keys() {
  return {"title",   "teacher", "first_day", "every", "days",  "start_time", "time_zone",    "holidays",
          "minutes", "lessons", "students", "spares", "hand",  "paper", "language",   "home_minutes", "seen_before"};
}

Keys cloth_keys() { return {"count", "per_cm", "line", "margin_mm", "colour", "size_threads", "middle", "begin", "price", "currency"}; }

Keys thread_keys() { return {"pearl", "tex", "colour", "needle", "ball_m", "ball_g", "sold_as", "price", "currency"}; }

std::string length_key(std::string_view kind) { return std::string(kind) + "_length_cm"; }

Keys habits_keys() {
  Keys keys{"working_length_cm"};
  for (const std::string& kind : kind_names()) keys.push_back(length_key(kind));
  for (const char* key :
       {"tail_cm", "first_tail_cm", "take_up", "waste", "back_limit", "class_share", "prepare_minutes", "wash_minutes", "pace", "edge", "eyelet_needle", "stitches_a_minute", "count_cost"})
    keys.emplace_back(key);
  return keys;
}

Keys count_cost_keys() { return {"glance", "glance_to", "each", "second_leg", "under_stitches", "plain_landmark"}; }

Keys kind_names() {
  Keys names;
  for (const stitch::Kind* kind : stitch::kinds()) names.emplace_back(kind->name);
  return names;
}

Keys speed_names() {
  Keys names = kind_names();
  names.insert(names.end(), {"bars", "fillings", "cut-out"});
  return names;
}

Keys part_keys() { return {"name", "kind", "thread", "turn", "mirror", "about", "begin_at", "count_from", "notes"}; }

Keys part_keys(const stitch::Kind& kind) {
  const Keys all = part_keys();
  Keys keys(all.begin(), all.begin() + 3);
  for (const stitch::KeySpec& key : kind.keys) keys.emplace_back(key.name);
  keys.insert(keys.end(), all.begin() + 3, all.end());
  return keys;
}

Keys student_keys() { return {"name", "hand"}; }

Keys lesson_keys() { return {"title", "work", "notes", "date", "minutes", "locked"}; }

}  // namespace file
