// One course being edited, without a window: the file, its history, what is known of the text now, and what must be kept safe.
#pragma once

#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "base/result.h"
#include "session/autosave.h"
#include "session/edits.h"
#include "session/history.h"
#include "session/planner.h"

namespace session {

class Session {
 public:
  /// `spare`: where unsaved work is kept when the file's own folder cannot be written. `ready`: see Planner.
  Session(std::filesystem::path spare, std::function<void()> ready = {});
  Session(const Session&) = delete;
  Session& operator=(const Session&) = delete;

  /// Opens a file. A file with faults opens too: its faults are in seen(), and it can be looked at when it is mended on disk. Trouble when it cannot
  /// be read at all; then what was open stays open.
  base::Result<void> open(const std::filesystem::path& file);
  /// A course that has no file yet.
  void begin(std::string text);

  /// The last finished snapshot that had no faults; null before the first. Its generation tells how old it is.
  const Seen& seen() const { return seen_; }
  /// Faults of the text now, as far as they are known.
  const base::Faults& faults() const { return faults_; }
  bool planning() const { return generation_ != known_; }
  /// Takes what the planner has finished. True when something is new. Never waits.
  bool poll();
  void wait();

  /// Changes the text; an edit that would make faults is refused with the first of them, and nothing is changed.
  base::Result<void> apply(const Edit& edit);
  bool undo();
  bool redo();
  std::string_view undo_name() const { return history_.undo_name(); }
  std::string_view redo_name() const { return history_.redo_name(); }
  const std::string& text() const { return *history_.now(); }

  bool saved() const { return history_.saved(); }
  const std::optional<std::filesystem::path>& file() const { return file_; }
  /// Has someone else changed the file since it was opened or saved?
  bool changed_on_disk() const;
  base::Result<void> save(bool over_changes = false);
  base::Result<void> save_as(const std::filesystem::path& file);

  /// Work that an earlier session of this file did not save; take it up or leave it.
  const std::optional<std::string>& unsaved_work() const { return unsaved_; }
  void take_up_unsaved_work();
  void leave_unsaved_work();
  /// Writes unsaved work beside the file where there is something new; to be called every few seconds.
  base::Result<void> keep();
  bool open_elsewhere() const { return open_elsewhere_; }

 private:
  void ask();
  void settle(const std::filesystem::path& file, const std::string& text);
  std::filesystem::path kept_path() const;

  std::filesystem::path spare_;
  std::optional<std::filesystem::path> file_;
  std::string on_disk_;
  History history_{""};
  std::uint64_t generation_ = 0, known_ = 0;
  Seen seen_;
  base::Faults faults_;
  Text kept_;
  std::optional<std::string> unsaved_;
  std::optional<FileLock> lock_;
  bool open_elsewhere_ = false;
  Planner planner_;
};

}  // namespace session
