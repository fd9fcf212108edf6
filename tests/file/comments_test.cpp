// Where the teacher's comments go in canonical form.
#include <doctest/doctest.h>

#include "read_faults.h"

namespace {

constexpr std::string_view rest = "[cloth]\ncount = 22\n";

/// Tidies both ways: what is given becomes what is wanted, and that stays as it is.
void check_tidy(const std::string& text, const std::string& wanted) {
  CAPTURE(text);
  CHECK(faults_of(text) == "");
  CHECK(file::tidy(text) == wanted);
  CHECK(file::tidy(wanted) == wanted);
}

}  // namespace

TEST_CASE("comments stand before their key or table, or behind their line") {
  check_tidy(R"(# A course, invented
# in two lines

# and more
format=1 # version

    # the course
[course]# about it
   #who
title="x"#its name
# teaches
teacher="y"
[cloth]
count=22
)",
             R"(# A course, invented
# in two lines

# and more
format = 1  # version

# the course
[course]  # about it
#who
title = "x"  #its name
# teaches
teacher = "y"

[cloth]
count = 22
)");
}

TEST_CASE("comments go with their key when its place changes") {
  check_tidy(R"(format = 1
[cloth]
# how fine
count = 22 # an inch
[course]
# how long
minutes = 60
# what
title = "x" # name
)",
             R"(format = 1

[course]
# what
title = "x"  # name
# how long
minutes = 60

[cloth]
# how fine
count = 22  # an inch
)");
}

TEST_CASE("comments at the end of a table stay there, those at the end of the file too") {
  check_tidy(R"(format = 1
# end of the top

[course]
title = "x"
# end of the course
# still

# about the cloth
[cloth]
count = 22
# end of the cloth

# end of the file

# really
)",
             R"(format = 1
# end of the top

[course]
title = "x"
# end of the course
# still

# about the cloth
[cloth]
count = 22
# end of the cloth

# end of the file

# really
)");
}

TEST_CASE("the end of a table goes with the table") {
  check_tidy(R"(format = 1
[cloth]
count = 22
# end of the cloth

[course]
title = "x"
# end of the course
)",
             R"(format = 1

[course]
title = "x"
# end of the course

[cloth]
count = 22
# end of the cloth
)");
}

TEST_CASE("comments within a list move above its key") {
  check_tidy(R"(format = 1
[course]
title = "x"
# before
holidays = [ # first
  # second
  2027-01-12, # third
  2027-01-19 # fourth
  # fifth
] # behind
[cloth]
count = 22
)",
             R"(format = 1

[course]
title = "x"
# before
# first
# second
# third
# fourth
# fifth
holidays = [2027-01-12, 2027-01-19]  # behind

[cloth]
count = 22
)");
}

TEST_CASE("comments of tables in braces and of keys with dots") {
  check_tidy(R"(format = 1
# title
course.title = "x" # t
# cloth
cloth = { count = 22 } # c
# threads
[thread] # all
# heavy one
heavy = { pearl = 5 } # five
# fine one
fine.pearl = 8 # eight
# end of threads

[habits.count_cost] # costs
glance = 0
)",
             R"(format = 1

[course]
# title
title = "x"  # t

# cloth
[cloth]  # c
count = 22

# threads
# all
# heavy one
[thread.heavy]  # five
pearl = 5

[thread.fine]
# fine one
pearl = 8  # eight
# end of threads

[habits.count_cost]  # costs
glance = 0
)");
}

TEST_CASE("a number sign within a text is no comment") {
  check_tidy(
      std::string("format = 1\n[course]\ntitle = \"# no\" # yes\nteacher = '# \"no' # yes\n[cloth]\ncount = 22\ncolour = \"#AABBCC\"\n"),
      "format = 1\n\n[course]\ntitle = \"# no\"  # yes\nteacher = \"# \\\"no\"  # yes\n\n[cloth]\ncount = 22\ncolour = \"#AABBCC\"\n");
}

TEST_CASE("comments of tables that are not written again are kept at the end") {
  const std::string text = "format = 1\n[course]\ntitle = \"x\"\n" + std::string(rest) + "# nothing yet\npart = [] # none\n";
  // part is a key of [cloth] here: not a course
  CHECK(faults_of(text) != "");
  CHECK(file::tidy(text) == text);
  check_tidy("# none yet\npart = [] # so far\nformat = 1\n[course]\ntitle = \"x\"\n" + std::string(rest),
             "format = 1\n\n[course]\ntitle = \"x\"\n\n[cloth]\ncount = 22\n\n# none yet\n# so far\n");
}
