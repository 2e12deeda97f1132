# Turns text files into one C++ source, so that the program needs no file of ours at run time.

set(MASLIN_EMBED_SCRIPT ${CMAKE_SOURCE_DIR}/cmake/EmbedFiles.cmake)
set(MASLIN_CODES_SCRIPT ${CMAKE_SOURCE_DIR}/cmake/CheckCodes.cmake)

# maslin_embed(<variable> <name> <folder> GLOB <pattern>)
# Sets <variable> to a generated source that defines maslin::embedded::<name>().
function(maslin_embed variable name folder)
  cmake_parse_arguments(ARG "" "GLOB" "" ${ARGN})
  file(GLOB_RECURSE files CONFIGURE_DEPENDS RELATIVE ${CMAKE_SOURCE_DIR}/${folder}
       ${CMAKE_SOURCE_DIR}/${folder}/${ARG_GLOB})
  list(SORT files)
  set(output ${CMAKE_BINARY_DIR}/generated/${name}.cpp)
  list(TRANSFORM files PREPEND ${CMAKE_SOURCE_DIR}/${folder}/ OUTPUT_VARIABLE inputs)
  add_custom_command(
    OUTPUT ${output}
    COMMAND ${CMAKE_COMMAND} -DNAME=${name} -DFOLDER=${CMAKE_SOURCE_DIR}/${folder}
            "-DFILES=${files}" -DOUTPUT=${output} -P ${MASLIN_EMBED_SCRIPT}
    DEPENDS ${inputs} ${MASLIN_EMBED_SCRIPT}
    COMMENT "Embedding ${folder}"
    VERBATIM)
  set(${variable} ${output} PARENT_SCOPE)
endfunction()

# A code lives in three places: the list, the place that finds it, and its page.
function(maslin_check_codes variable)
  file(GLOB_RECURSE sources CONFIGURE_DEPENDS ${CMAKE_SOURCE_DIR}/src/*.cpp
       ${CMAKE_SOURCE_DIR}/grammar/*.hpp ${CMAKE_SOURCE_DIR}/src/*.hpp)
  file(GLOB pages CONFIGURE_DEPENDS ${CMAKE_SOURCE_DIR}/src/diagnostic/explain/*.md)
  set(output ${CMAKE_BINARY_DIR}/generated/codes_checked.cpp)
  add_custom_command(
    OUTPUT ${output}
    COMMAND ${CMAKE_COMMAND} -DROOT=${CMAKE_SOURCE_DIR} -DOUTPUT=${output} -P
            ${MASLIN_CODES_SCRIPT}
    DEPENDS ${CMAKE_SOURCE_DIR}/src/diagnostic/codes.def ${sources} ${pages}
            ${MASLIN_CODES_SCRIPT}
    COMMENT "Checking that every diagnostic code has its place and its page"
    VERBATIM)
  set(${variable} ${output} PARENT_SCOPE)
endfunction()
