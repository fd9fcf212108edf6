// Takes the keys of one table, one after another: what is written and right goes into the course, all else is told once.
#pragma once

#include <functional>
#include <initializer_list>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "file/values.h"

namespace file {

/// A table in its file: its keys, its place and the name by which faults speak of it, e.g. "[course]".
struct Site {
  const Table* table = nullptr;
  base::TextPlace place;
  int length = 1;
  std::string name;
};

class TableReader {
 public:
  TableReader(Site site, FaultList& faults) : site_(std::move(site)), faults_(faults) {}

  const Node* find(std::string_view key) const;
  const Site& site() const { return site_; }
  FaultList& faults() const { return faults_; }

  /// Adds a fault where the key is not written; `example` shows how it is.
  void require(std::string_view key, std::string_view example) const;
  /// Adds a fault for each written key that is not among these and was not `told` of already.
  void refuse_others(const std::vector<std::string>& keys, const std::function<bool(const std::string&)>& told = nullptr) const;

  template <class T>
  void whole(std::string_view key, int least, int most, T& into) const {
    if (const Node* node = find(key)) set(read_whole(*node, least, most, faults_), into);
  }
  template <class T>
  void number(std::string_view key, double least, double most, T& into) const {
    if (const Node* node = find(key)) set(read_number(*node, least, most, faults_), into);
  }
  template <class T, class Value>
  void take(std::string_view key, std::optional<Value> (*read)(const Node&, FaultList&), T& into) const {
    if (const Node* node = find(key)) set(read(*node, faults_), into);
  }
  void line(std::string_view key, int most, std::string& into) const;
  /// A list, each of its items read so.
  template <class Value>
  void list(std::string_view key, std::size_t most, std::optional<Value> (*read)(const Node&, FaultList&), std::vector<Value>& into) const {
    for (const Node& item : items(key, most))
      if (auto value = read(item, faults_)) into.push_back(std::move(*value));
  }
  template <class Enum>
  void word(std::string_view key, std::initializer_list<std::pair<std::string_view, Enum>> words, Enum& into) const {
    const Node* node = find(key);
    if (!node) return;
    std::vector<std::string> names;
    for (const auto& word : words) names.emplace_back(word.first);
    if (const auto index = read_word(*node, names, faults_)) into = (words.begin() + *index)->second;
  }
  /// The items of a list; none where it is not written, no list, or longer than `most`.
  const std::vector<Node>& items(std::string_view key, std::size_t most) const;

 private:
  template <class From, class To>
  static void set(std::optional<From> from, To& to) {
    if (from) to = std::move(*from);
  }

  Site site_;
  FaultList& faults_;
};

/// The table of that name, e.g. `course`; a fault and nothing where it is not one table.
std::optional<Site> table_at(const Entry* entry, std::string name, FaultList& faults);
/// The tables of [[name]]; a fault where it is something else.
std::vector<Site> tables_at(const Entry* entry, const std::string& name, FaultList& faults);

}  // namespace file
