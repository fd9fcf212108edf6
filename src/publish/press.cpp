#include "publish/press.h"

#include <tbb/parallel_for.h>

#include <atomic>
#include <mutex>
#include <optional>
#include <set>

#include "base/whole_file.h"

namespace publish {
namespace {

tl::unexpected<base::Trouble> stopped() {
  return base::trouble(base::TroubleKind::cancelled, "stopped before the handouts were written; nothing was changed");
}

base::Result<void> make_folders(const std::vector<Job>& jobs) {
  std::set<std::filesystem::path> folders;
  for (const Job& job : jobs) folders.insert(job.path.parent_path());
  for (const std::filesystem::path& folder : folders)
    if (auto made = base::make_folder(folder); !made) return made;
  return {};
}

}  // namespace

base::Result<void> on_all_cores(std::size_t n, Types& types, const std::stop_token& stop,
                                const std::function<base::Result<void>(std::size_t, const paint::Type&)>& work) {
  std::mutex mutex;
  std::optional<base::Trouble> trouble;
  std::atomic<bool> failed = false;
  const auto one = [&](std::size_t i) {
    if (failed || stop.stop_requested()) return;
    const auto type = types.mine();
    const base::Result<void> done = type ? work(i, **type) : tl::make_unexpected(type.error());
    if (done) return;
    const std::lock_guard lock(mutex);
    if (!trouble) trouble = done.error();
    failed = true;
  };
  std::atomic<std::size_t> next = 0;  // taken in order, however the work is parted
  tbb::parallel_for(std::size_t{0}, n, [&](std::size_t) { one(next++); });
  if (trouble) return tl::make_unexpected(*trouble);
  if (stop.stop_requested()) return stopped();
  return {};
}

base::Result<Written> print(const std::vector<Job>& jobs, Types& types, const std::stop_token& stop,
                            const std::function<void(int done, int of)>& progress) {
  if (auto made = make_folders(jobs); !made) return tl::make_unexpected(made.error());
  base::Batch batch;
  std::mutex mutex;
  int done = 0;
  const auto work = [&](std::size_t i, const paint::Type& type) -> base::Result<void> {
    auto bytes = jobs[i].make(type);
    if (!bytes) return tl::make_unexpected(bytes.error());
    const std::lock_guard lock(mutex);
    if (auto added = batch.add(jobs[i].path, {reinterpret_cast<const char*>(bytes->data()), bytes->size()}); !added) return added;
    if (progress) progress(++done, static_cast<int>(jobs.size()));
    return {};
  };
  if (auto all = on_all_cores(jobs.size(), types, stop, work); !all) return tl::make_unexpected(all.error());
  if (auto kept = batch.keep(); !kept) return tl::make_unexpected(kept.error());
  Written written;
  for (const Job& job : jobs) written.files.push_back(job.path);
  return written;
}

}  // namespace publish
