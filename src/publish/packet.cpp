#include "publish/packet.h"

#include <fmt/format.h>

#include <algorithm>
#include <fstream>
#include <map>
#include <mutex>
#include <sstream>

#include "base/whole_folder.h"
#include "publish/zip.h"

namespace publish {
namespace {

std::string packet_name(const Making& making) { return file_stem(making.course.title) + '-' + name_in_packet(making.phrases, "packet"); }

std::string bytes_in(const std::filesystem::path& path) {
  std::ifstream in(path, std::ios::binary);
  std::ostringstream out;
  out << in.rdbuf();
  return out.str();
}

/// What one of the packet's files holds now, "" where there is none.
std::string in_packet_now(const Making& making, const std::string& path) {
  return making.order.packet == Packet::zip ? from_zip(packet_path(making), path) : bytes_in(packet_path(making) / path);
}

/// When the calendar says it was written.
std::string stamp_in(const std::string& calendar) {
  constexpr std::string_view before = "DTSTAMP:";
  const std::size_t at = calendar.find(before);
  return at == std::string::npos ? "" : calendar.substr(at + before.size(), std::string_view("20270112T173000Z").size());
}

/// With its old stamp where nothing else has changed.
base::Result<Bytes> calendar_now(const Making& making, const say::Voice& voice) {
  const std::string before = in_packet_now(making, calendar_file(making.phrases));
  if (const std::string old = stamp_in(before); !old.empty())
    if (const auto again = calendar(voice, making.plan, old); again && *again == before) return bytes_of(*again);
  const auto text = calendar(voice, making.plan, making.order.stamp);
  if (!text) return tl::make_unexpected(text.error());
  return bytes_of(*text);
}

/// Takes what is made in any order and hands it on in the order of the jobs; little waits, since jobs are begun in order.
template <class Sink>
class InOrder {
 public:
  explicit InOrder(Sink sink) : sink_(std::move(sink)) {}
  base::Result<void> take(std::size_t i, Bytes bytes) {
    const std::lock_guard lock(mutex_);
    waiting_.emplace(i, std::move(bytes));
    for (auto first = waiting_.begin(); first != waiting_.end() && first->first == next_; first = waiting_.erase(first), ++next_)
      if (auto handed = sink_(first->first, {reinterpret_cast<const char*>(first->second.data()), first->second.size()}); !handed)
        return handed;
    return {};
  }

 private:
  Sink sink_;
  std::mutex mutex_;
  std::map<std::size_t, Bytes> waiting_;
  std::size_t next_ = 0;
};

template <class Sink>
base::Result<void> make_all(const std::vector<Job>& jobs, Types& types, const std::stop_token& stop, Sink sink) {
  InOrder in_order(std::move(sink));
  return on_all_cores(jobs.size(), types, stop, [&](std::size_t i, const paint::Type& type) -> base::Result<void> {
    auto bytes = jobs[i].make(type);
    if (!bytes) return tl::make_unexpected(bytes.error());
    return in_order.take(i, std::move(*bytes));
  });
}

}  // namespace

std::string name_in_packet(const words::Phrases& phrases, const std::string& key) { return file_stem(phrases.say("packet." + key)); }
std::string calendar_file(const words::Phrases& phrases) { return name_in_packet(phrases, "calendar") + ".ics"; }

std::filesystem::path packet_path(const Making& making) {
  return making.order.into / (packet_name(making) + (making.order.packet == Packet::zip ? ".zip" : ""));
}

std::vector<Job> packet_papers(const Making& making) {
  const say::Voice voice{making.phrases, making.order.hand == course::Hand::left ? say::Hand::left : say::Hand::right, making.course};
  std::vector<Job> jobs;
  const auto add = [&](const std::string& name, auto make) {
    jobs.push_back({name, [&making, voice, make](const paint::Type& type) -> base::Result<Bytes> { return make(making, voice, type); }});
  };
  const auto named = [&](const char* key) { return name_in_packet(making.phrases, key); };
  add(named("letter") + ".txt",
      [](const Making& m, const say::Voice& v, const paint::Type& type) { return bytes_of(letter(v, m.plan, type)); });
  add(named("shopping") + ".txt",
      [](const Making& m, const say::Voice& v, const paint::Type&) { return bytes_of(supplies_text(v, m.plan)); });
  add(named("shopping") + ".csv",
      [](const Making& m, const say::Voice& v, const paint::Type&) { return bytes_of(supplies_csv(v, m.plan)); });
  const auto& lessons = making.plan.lessons;
  if (std::any_of(lessons.begin(), lessons.end(), [](const plan::LessonPlan& lesson) { return lesson.date.has_value(); }))
    add(calendar_file(making.phrases), [](const Making& m, const say::Voice& v, const paint::Type&) { return calendar_now(m, v); });
  return jobs;
}

base::Result<Written> print_packet(const Making& making, const std::vector<Job>& jobs, Types& types, const std::stop_token& stop,
                                   const std::function<void(int done, int of)>& progress) {
  const auto write = [&](auto& packet) -> base::Result<Written> {
    if (auto begun = packet.begin(); !begun) return tl::make_unexpected(begun.error());
    const auto add = [&](std::size_t i, std::string_view bytes) {
      auto added = packet.add(jobs[i].path, bytes);
      if (added && progress) progress(static_cast<int>(i) + 1, static_cast<int>(jobs.size()));
      return added;
    };
    if (auto all = make_all(jobs, types, stop, add); !all) return tl::make_unexpected(all.error());
    if (auto kept = packet.keep(); !kept) return tl::make_unexpected(kept.error());
    return Written{{packet_path(making)}, {}};
  };
  if (making.order.packet == Packet::zip) {
    ZipFile packet(packet_path(making), packet_name(making));
    return write(packet);
  }
  base::WholeFolder packet(packet_path(making));
  return write(packet);
}

}  // namespace publish
