# Writes the tables into one C++ file as byte arrays.
set(text "#include \"assets/assets.h\"\n\nnamespace assets {\n\nstd::string_view table(std::string_view path) {\n")
foreach(table ${TABLES})
  file(READ ${ROOT}/${table} hex HEX)
  string(REGEX REPLACE "([0-9a-f][0-9a-f])" "0x\\1," bytes "${hex}")
  string(MAKE_C_IDENTIFIER ${table} id)
  string(APPEND text "  static const unsigned char ${id}[] = {${bytes}0};\n"
                     "  if (path == \"${table}\") return {reinterpret_cast<const char*>(${id}), sizeof ${id} - 1};\n")
endforeach()
string(APPEND text "  return {};\n}\n\n}  // namespace assets\n")
file(WRITE ${OUT} "${text}")
