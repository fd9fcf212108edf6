// The canonical form: tables and keys in the order of the reference, written by our own writer, the comments put back where they belong.
#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "file/comments.h"
#include "file/course_file.h"
#include "file/schema.h"
#include "file/syntax.h"
#include "file/text_check.h"
#include "file/write_value.h"

namespace file {
namespace {

class Writer {
 public:
  explicit Writer(const Outline& shape) : comments_(shape) {}

  std::string file(const Table& root) {
    pairs(root, {"format"});
    lines(comments_.take_end(0));
    table(root.find("course"), "[course]", course_keys());
    table(root.find("cloth"), "[cloth]", cloth_keys());
    threads(root.find("thread"));
    habits(root.find("habits"));
    tables(root.find("part"), "[[part]]", part_order);
    tables(root.find("lesson"), "[[lesson]]", [](const Table&) { return lesson_keys(); });
    tables(root.find("student"), "[[student]]", [](const Table&) { return student_keys(); });
    rest();
    return std::move(out_);
  }

 private:
  static Keys part_order(const Table& part) {
    const Entry* kind = part.find("kind");
    const Text* name = kind ? kind->node.as<Text>() : nullptr;
    const stitch::Kind* known = name ? stitch::find_kind(name->value) : nullptr;
    return known ? part_keys(*known) : part_keys();
  }

  void lines(const CommentLines& comments) {
    for (const std::string& comment : comments) out_ += comment + '\n';
  }

  void line(const std::string& text, const Remarks& remarks) {
    lines(remarks.before);
    out_ += text;
    if (!remarks.trailing.empty()) out_ += "  " + remarks.trailing;
    out_ += '\n';
  }

  /// Before a header: a blank line, and comments that wait for one.
  void blank() {
    if (!out_.empty()) out_ += '\n';
    lines(std::exchange(waiting_, {}));
  }

  void pairs(const Table& from, const Keys& keys) {
    for (const std::string& key : keys)
      if (const Entry* entry = from.find(key)) line(write_pair(key, entry->node), comments_.take(entry->place.line));
  }

  bool has_header(const Node& node, int segments) const {
    const Table* table = node.as<Table>();
    return (table && table->in_braces) || comments_.header_at(node.place.line, segments);
  }

  void table(const Node& node, const std::string& header, int segments, const Keys& keys) {
    const bool own = has_header(node, segments);
    blank();
    line(header, own ? comments_.take(node.place.line) : Remarks{});
    pairs(*node.as<Table>(), keys);
    if (own) lines(comments_.take_end(node.place.line));
  }

  void table(const Entry* entry, const std::string& header, const Keys& keys, int segments = 1) {
    if (entry) table(entry->node, header, segments, keys);
  }

  /// A header [thread] of its own is not written; its comments go to the first and the last thread.
  void threads(const Entry* entry) {
    if (!entry) return;
    const int line = entry->node.place.line;
    const bool own = comments_.header_at(line, 1) && !entry->node.as<Table>()->entries.empty();
    if (own) {
      Remarks remarks = comments_.take(line);
      waiting_ = std::move(remarks.before);
      if (!remarks.trailing.empty()) waiting_.push_back(std::move(remarks.trailing));
    }
    for (const Entry& thread : entry->node.as<Table>()->entries)
      table(&thread, fmt::format("[thread.{}]", write_key(thread.key)), thread_keys(), 2);
    if (own) lines(comments_.take_end(line));
  }

  /// The header stands only where it was written, or where it has a key.
  void habits(const Entry* entry) {
    if (!entry) return;
    const Table& table_of_habits = *entry->node.as<Table>();
    Keys keys = habits_keys();
    const Keys sub_tables{"stitches_a_minute", "count_cost"};
    std::erase_if(keys, [&](const std::string& key) { return key == sub_tables[0] || key == sub_tables[1]; });
    const bool own_key =
        std::any_of(keys.begin(), keys.end(), [&](const std::string& key) { return table_of_habits.find(key) != nullptr; });
    if (own_key || has_header(entry->node, 1)) table(entry, "[habits]", keys);
    table(table_of_habits.find(sub_tables[0]), "[habits.stitches_a_minute]", speed_names(), 2);
    table(table_of_habits.find(sub_tables[1]), "[habits.count_cost]", count_cost_keys(), 2);
  }

  void tables(const Entry* entry, const std::string& header, Keys (*keys)(const Table&)) {
    if (!entry) return;
    for (const Node& node : entry->node.as<List>()->items) table(node, header, 1, keys(*node.as<Table>()));
  }

  void rest() {
    const CommentLines left = comments_.take_rest();
    if (left.empty()) return;
    blank();
    lines(left);
  }

  Comments comments_;
  CommentLines waiting_;
  std::string out_;
};

}  // namespace

std::string tidy(std::string_view text) {
  if (!read(text).faults.empty()) return std::string(text);
  const std::string_view body = without_mark(text);
  const Lines lines(body);
  const Outline shape = outline(body);
  std::string tidied = Writer(shape).file(parse(lines, shape).root);
  return tidied.size() <= byte_limit ? tidied : std::string(text);
}

}  // namespace file
