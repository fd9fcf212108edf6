// Who may include whom: the #include lines of src/ against the rows of src/CMakeLists.txt. The checker is tried on made-up trees first.
#include <doctest/doctest.h>
#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <map>
#include <optional>

#include "base/rows.h"
#include "base/sources.h"

using house::Row;
using house::Rows;
using house::Source;

namespace {

struct Include {
  std::string name;
  bool own = false;  ///< in quotes: a file of the project
  int line = 0;
};

std::vector<Include> includes_of(const Source& file) {
  std::vector<Include> includes;
  const std::vector<std::string> text = house::lines_of(file.text), code = house::lines_of(file.code);
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (!code[i].starts_with("#include")) continue;
    const std::size_t open = text[i].find_first_of("<\"");
    const std::size_t close = text[i].find_first_of(">\"", open + 1);
    includes.push_back({text[i].substr(open + 1, close - open - 1), text[i][open] == '"', static_cast<int>(i) + 1});
  }
  return includes;
}

/// Which library a <header> belongs to: a target of the rows, "" for the language and the system, nothing where it is unknown.
std::optional<std::string> library_of(const std::string& header) {
  static const std::array<std::pair<std::string_view, std::string_view>, 20> starts{{
      {"fmt/", "fmt::fmt"}, {"tl/", "tl::expected"}, {"toml++/", "PkgConfig::TOMLPP"}, {"cairo", "PkgConfig::CAIRO"}, {"pango/", "PkgConfig::PANGO"},
      {"glib", "PkgConfig::PANGO"}, {"fontconfig/", "PkgConfig::PANGO"}, {"libdeflate.h", "PkgConfig::DEFLATE"}, {"isa-l/", "PkgConfig::ISAL"}, {"tbb/", "TBB::tbb"}, {"CLI/", "CLI11::CLI11"},
      {"libical/", "PkgConfig::ICAL"}, {"qpdf/", "PkgConfig::QPDF"}, {"archive", "PkgConfig::ARCHIVE"}, {"imgui", "PkgConfig::IMGUI"}, {"backends/imgui", "PkgConfig::IMGUI"},
      {"GLFW/", "glfw"}, {"GL/", "OpenGL::OpenGL"}, {"stb/", "header only"}, {"sys/", ""}}};
  for (const auto& [start, library] : starts)
    if (header.starts_with(start)) return std::string(library);
  static const std::set<std::string> system{"unistd.h", "fcntl.h", "signal.h", "poll.h", "dirent.h"};
  if (header.find_first_of("./") == std::string::npos || system.contains(header)) return "";
  return std::nullopt;
}

std::string own_breach(const Rows& rows, const std::set<std::string>& files, const Row& row, const std::string& name) {
  if (name.starts_with("assets/")) {
    const bool linked = std::find(row.uses.begin(), row.uses.end(), "tellekant_assets") != row.uses.end();
    return linked ? "" : "the tables of assets/ are handed in by the programs";
  }
  if (!files.contains(name)) return "no such file under src/";
  const Row* other = house::row_of_file(rows, name);
  if (!other) return "its folder has no row";
  return house::reach_of(rows, row.name).contains(other->name) ? "" : fmt::format("the row of {} does not need {}", row.name, other->name);
}

std::string library_breach(const Rows& rows, const Row& row, const std::string& name) {
  const auto library = library_of(name);
  if (!library) return "a library that this test does not know";
  if (library->empty() || *library == "header only") return "";
  return house::libraries_of(rows, row.name).contains(*library) ? "" : fmt::format("the row of {} does not use {}", row.name, *library);
}

/// "src/cloth/way.h:3: words/phrases.h: the row of cloth does not need words"
std::vector<std::string> include_breaches(const Rows& rows, const std::vector<Source>& sources) {
  std::set<std::string> files;
  for (const Source& file : sources) files.insert(file.path.substr(4));
  std::vector<std::string> breaches;
  for (const Source& file : sources) {
    const Row* row = house::row_of_file(rows, file.path.substr(4));
    if (!row) breaches.push_back(fmt::format("{}: its folder has no row", file.path));
    if (!row) continue;
    for (const Include& include : includes_of(file)) {
      const std::string why = include.own ? own_breach(rows, files, *row, include.name) : library_breach(rows, *row, include.name);
      if (!why.empty()) breaches.push_back(fmt::format("{}:{}: {}: {}", file.path, include.line, include.name, why));
    }
  }
  return breaches;
}

/// A way from `at` back to `at` along the edges, or nothing.
bool on_circle(const std::map<std::string, std::vector<std::string>>& edges, const std::string& at) {
  std::set<std::string> reached;
  std::vector<std::string> open{at};
  while (!open.empty()) {
    const std::string next = open.back();
    open.pop_back();
    const auto found = edges.find(next);
    if (found == edges.end()) continue;
    for (const std::string& to : found->second) {
      if (to == at) return true;
      if (reached.insert(to).second) open.push_back(to);
    }
  }
  return false;
}

std::vector<std::string> circles(const std::map<std::string, std::vector<std::string>>& edges) {
  std::vector<std::string> names;
  for (const auto& [name, to] : edges)
    if (on_circle(edges, name)) names.push_back(name);
  return names;
}

std::map<std::string, std::vector<std::string>> edges_of(const Rows& rows) {
  std::map<std::string, std::vector<std::string>> edges;
  for (const Row& row : rows) edges[row.name] = row.needs;
  return edges;
}

std::map<std::string, std::vector<std::string>> edges_of(const std::vector<Source>& sources) {
  std::map<std::string, std::vector<std::string>> edges;
  for (const Source& file : sources)
    for (const Include& include : includes_of(file))
      if (include.own) edges[file.path.substr(4)].push_back(include.name);
  return edges;
}

std::vector<std::string> window_libraries(const Rows& rows, const std::string& program) {
  std::vector<std::string> found;
  const house::Pattern window("imgui|IMGUI|[gG][lL][fF][wW]|GLFW|[oO]pen[gG][lL]|OPENGL|[xX]11|[wW]ayland|WAYLAND|[gG][tT][kK]|[qQ][tT][0-9]");
  for (const std::string& library : house::libraries_of(rows, program))
    if (window.in(library)) found.push_back(library);
  return found;
}

Rows project_rows() { return house::rows_of(house::read_file(std::string(TELLEKANT_ROOT) + "/src/CMakeLists.txt")); }

const char* made_up = R"(
function(tellekant_folder name)
endfunction()
tellekant_folder(low USES fmt::fmt)  # tellekant_folder(not_a_row)
tellekant_folder(side NEEDS low)
tellekant_folder(high PATH up/high NEEDS low
  USES PkgConfig::IMGUI)
add_executable(prog ${tool_sources})
target_link_libraries(prog PRIVATE tk_high tellekant_assets CLI11::CLI11)
add_library(tk_desk STATIC ${desk_sources})
target_link_libraries(tk_desk PUBLIC tk_side)
add_executable(window desk/main.cpp)
target_link_libraries(window PRIVATE tk_desk glfw)
)";

std::vector<std::string> made_up_breaches(const std::string& path, const std::string& text) {
  return include_breaches(house::rows_of(made_up), {house::source("src/low/l.h", ""), house::source("src/side/s.h", ""), house::source("src/up/high/h.h", ""),
                                                    house::source(path, text)});
}

using Lines = std::vector<std::string>;

}  // namespace

TEST_CASE("rows are read with their paths, needs and uses, programs too") {
  const Rows rows = house::rows_of(made_up);
  REQUIRE(rows.size() == 6);
  CHECK(rows[2].path == "up/high");
  CHECK(rows[2].needs == Lines{"low"});
  CHECK(rows[2].uses == Lines{"PkgConfig::IMGUI"});
  CHECK(rows[3].name == "prog");
  CHECK(rows[3].path == "tool");
  CHECK(rows[3].needs == Lines{"high"});
  CHECK(rows[4].name == "desk");
  CHECK(rows[4].needs == Lines{"side"});
  CHECK(rows[5].files == Lines{"desk/main.cpp"});
  CHECK(house::row_of_file(rows, "desk/main.cpp")->name == "window");
  CHECK(house::row_of_file(rows, "desk/panel.cpp")->name == "desk");
  CHECK(house::reach_of(rows, "prog") == std::set<std::string>{"high", "low", "prog"});
  CHECK(window_libraries(rows, "prog") == Lines{"PkgConfig::IMGUI"});
}

TEST_CASE("what a row does not allow is found") {
  CHECK(made_up_breaches("src/up/high/x.cpp", "#include <vector>\n#include \"low/l.h\"\n#include <imgui.h>\n").empty());
  CHECK(made_up_breaches("src/up/high/x.cpp", "// a\n#include \"side/s.h\"\n") == Lines{"src/up/high/x.cpp:2: side/s.h: the row of high does not need side"});
  CHECK(made_up_breaches("src/low/x.cpp", "#include \"up/high/h.h\"\n") == Lines{"src/low/x.cpp:1: up/high/h.h: the row of low does not need high"});
  CHECK(made_up_breaches("src/low/x.cpp", "#include \"l.h\"\n") == Lines{"src/low/x.cpp:1: l.h: no such file under src/"});
  CHECK(made_up_breaches("src/low/x.cpp", "#include <cairo.h>\n") == Lines{"src/low/x.cpp:1: cairo.h: the row of low does not use PkgConfig::CAIRO"});
  CHECK(made_up_breaches("src/low/x.cpp", "#include <zlib.h>\n") == Lines{"src/low/x.cpp:1: zlib.h: a library that this test does not know"});
  CHECK(made_up_breaches("src/low/x.cpp", "#include \"assets/assets.h\"\n") == Lines{"src/low/x.cpp:1: assets/assets.h: the tables of assets/ are handed in by the programs"});
  CHECK(made_up_breaches("src/tool/x.cpp", "#include \"assets/assets.h\"\n#include <CLI/CLI.hpp>\n").empty());
  CHECK(made_up_breaches("src/desk/x.cpp", "#include <GLFW/glfw3.h>\n") == Lines{"src/desk/x.cpp:1: GLFW/glfw3.h: the row of desk does not use glfw"});
  CHECK(made_up_breaches("src/desk/main.cpp", "#include <GLFW/glfw3.h>\n#include \"side/s.h\"\n").empty());
  CHECK(made_up_breaches("src/odd/x.cpp", "") == Lines{"src/odd/x.cpp: its folder has no row"});
  CHECK(made_up_breaches("src/low/x.cpp", "/*\n#include <zlib.h>\n*/\n// #include <zlib.h>\n").empty());
}

TEST_CASE("circles are found in rows and in files") {
  CHECK(circles({{"a", {"b"}}, {"b", {"c"}}, {"c", {"b"}}, {"d", {}}}) == Lines{"b", "c"});
  CHECK(circles(edges_of({house::source("src/a/x.h", "#include \"a/y.h\"\n"), house::source("src/a/y.h", "#include \"a/x.h\"\n")})) == Lines{"a/x.h", "a/y.h"});
}

TEST_CASE("a folder includes only what its row needs") {
  const auto sources = house::sources_under({"src"}, {".h", ".cpp"});
  REQUIRE(sources.size() > 50);
  CHECK(fmt::format("{}", fmt::join(include_breaches(project_rows(), sources), "\n")) == "");
}

TEST_CASE("no circle, and no row without its folder") {
  const Rows rows = project_rows();
  CHECK(circles(edges_of(rows)).empty());
  CHECK(circles(edges_of(house::sources_under({"src"}, {".h", ".cpp"}))).empty());
  for (const Row& row : rows) {
    CAPTURE(row.name);
    CHECK(std::filesystem::is_directory(std::string(TELLEKANT_ROOT) + "/src/" + row.path));
    for (const std::string& need : row.needs) CHECK_MESSAGE(house::row_named(rows, need), need);
  }
}

TEST_CASE("the command line links no window library") {
  const Rows rows = project_rows();
  CHECK(house::libraries_of(rows, "tellekant").contains("PkgConfig::CAIRO"));
  CHECK(window_libraries(rows, "tellekant").empty());
}
