// [thread.NAME]: the threads under the teacher's own short names, in the order in which they are written.
#include <fmt/format.h>

#include "file/schema.h"
#include "file/table_reader.h"
#include "file/tables.h"
#include "file/thread_sizes.h"
#include "file/write_value.h"

namespace file {
namespace {

constexpr std::size_t thread_limit = 1000;

void read_thickness(const TableReader& table, course::Thread& thread) {
  table.whole("pearl", 1, 40, thread.pearl);
  table.number("tex", 1, 5000, thread.tex);
  const Entry* tex = table.site().table->find("tex");
  if (!tex) return table.require("pearl", "pearl = 5 (the size of a pearl cotton) or tex = 200");
  if (table.find("pearl")) table.faults().add_key(*tex, "both \"pearl\" and \"tex\"", "one of them");
}

void read_thread(const Entry& entry, Reading& reading) {
  const auto site = table_at(&entry, fmt::format("[thread.{}]", write_key(entry.key)), reading.faults);
  if (!site) return;
  course::Thread thread;
  thread.name = entry.key;
  thread.place = entry.place;
  name_is_right(entry.key, entry.place, entry.length, reading.faults);
  const TableReader table(*site, reading.faults);
  read_thickness(table, thread);
  course::Form form = course::Form::ball;
  table.take("colour", read_colour, thread.colour);
  table.whole("needle", 10, 30, thread.needle);
  if (thread.pearl) thread.sold = sold_as(thread_sizes(), *thread.pearl);
  table.number("ball_m", 0.1, 100000, thread.ball_m);
  table.number("ball_g", 0.1, 100000, thread.ball_g);
  table.word<course::Form>("sold_as", {{"ball", course::Form::ball}, {"skein", course::Form::skein}}, form);
  if (table.find("sold_as")) thread.form = form;
  table.take("price", read_price, thread.price);
  table.line("currency", 20, thread.currency);
  table.refuse_others(thread_keys());
  reading.thread_index.emplace(thread.name, static_cast<int>(reading.course.threads.size()));
  reading.course.threads.push_back(std::move(thread));
}

}  // namespace

void read_thread_tables(const Entry* entry, Reading& reading) {
  if (!entry) return;
  const auto site = table_at(entry, "[thread.NAME]", reading.faults);
  reading.threads_known = site.has_value();
  if (!site) return;
  for (const Entry& thread : site->table->entries) {
    if (reading.course.threads.size() == thread_limit) {
      reading.threads_known = false;
      return reading.faults.add_key(thread, fmt::format("more than {} threads", thread_limit), fmt::format("at most {}", thread_limit));
    }
    read_thread(thread, reading);
  }
}

}  // namespace file
