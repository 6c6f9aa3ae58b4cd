# Languages: one file tankwright_<language>.ts each. `ninja update_translations` takes new texts into them.
set(translations_dir ${CMAKE_CURRENT_LIST_DIR})
set(translations_files
  ${translations_dir}/tankwright_es.ts
  ${translations_dir}/tankwright_hi.ts
  ${translations_dir}/tankwright_ne.ts
  ${translations_dir}/tankwright_ur.ts
)
file(GLOB_RECURSE translated_sources CONFIGURE_DEPENDS
  ${translations_dir}/../app/*.cpp
  ${translations_dir}/../ui/*.cpp
  ${translations_dir}/../ui/*.h
)

# Compiles the languages into a library, under :/translations.
function(tankwright_add_translations target)
  qt_add_translations(${target}
    TS_FILES ${translations_files}
    SOURCES ${translated_sources}
    INCLUDE_DIRECTORIES ${translations_dir}/..
    RESOURCE_PREFIX /translations
    LUPDATE_OPTIONS -no-obsolete -locations none)
endfunction()
