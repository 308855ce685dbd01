# Translation files into the library: each FOLDER/LANGUAGE.json ({"key": "pattern"}) becomes lines of a table that
# `std::span<const PhraseText> NAME_phrases()` hands out. Read at build time, so a broken file stops the build and the
# programs need neither the files nor a JSON reader.
#
#   weavelog_embed_phrases(target NAME FOLDER)

if(NOT CMAKE_SCRIPT_MODE_FILE)
  set(WEAVELOG_EMBED_PHRASES ${CMAKE_CURRENT_LIST_FILE} CACHE INTERNAL "")

  function(weavelog_embed_phrases target name folder)
    file(GLOB files CONFIGURE_DEPENDS ${folder}/*.json)
    set(out ${CMAKE_CURRENT_BINARY_DIR}/${name}_phrases.cpp)
    add_custom_command(OUTPUT ${out}
      COMMAND ${CMAKE_COMMAND} -DNAME=${name} -DFOLDER=${folder} -DOUT=${out} -P ${WEAVELOG_EMBED_PHRASES}
      DEPENDS ${files} ${WEAVELOG_EMBED_PHRASES}
      COMMENT "Embedding the phrases of ${name}" VERBATIM)
    target_sources(${target} PRIVATE ${out})
  endfunction()
  return()
endif()

set(lines "")
file(GLOB files ${FOLDER}/*.json)
foreach(file IN LISTS files)
  get_filename_component(language ${file} NAME_WE)
  file(READ ${file} json)
  string(JSON count ERROR_VARIABLE error LENGTH "${json}")
  if(error)
    message(FATAL_ERROR "${file}: not JSON: ${error}")
  endif()
  if(count GREATER 0)
    math(EXPR last "${count} - 1")
    foreach(i RANGE ${last})
      string(JSON key MEMBER "${json}" ${i})
      string(JSON type TYPE "${json}" "${key}")
      if(NOT type STREQUAL "STRING")
        message(FATAL_ERROR "${file}: the value of \"${key}\" is not a text")
      endif()
      string(JSON pattern GET "${json}" "${key}")
      string(APPEND lines "    {\"${language}\", \"${key}\", R\"phrase(${pattern})phrase\"},\n")
    endforeach()
  endif()
endforeach()
file(WRITE ${OUT} "#include \"core/base/phrases.h\"\n\nnamespace weavelog {\n\nstd::span<const PhraseText> ${NAME}_phrases() {\n"
  "  static constexpr PhraseText kTexts[] = {\n${lines}  };\n  return kTexts;\n}\n\n}  // namespace weavelog\n")
