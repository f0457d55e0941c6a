# The generator of rock piles and their pictures, by rigid bodies (Bullet) and rays (Embree). Built only where
# PROOFSTONE_PILES is ON; its packages are those of setup/packages-piles.txt.
find_package(Bullet MODULE QUIET)
find_package(embree 3 QUIET)
find_package(PNG QUIET)
find_package(JPEG QUIET)
if(NOT BULLET_FOUND OR NOT embree_FOUND OR NOT PNG_FOUND OR NOT JPEG_FOUND)
  message(FATAL_ERROR "Libraries of the pile generator are missing: install the packages listed in setup/packages-piles.txt.")
endif()

if(NOT TARGET proofstone_simulation)
  add_source_library(simulation DEPENDS engine)
endif()
# The physics is read as a system library: its headers are not written for our warnings.
add_library(bullet_physics INTERFACE)
target_include_directories(bullet_physics SYSTEM INTERFACE ${BULLET_INCLUDE_DIRS})
target_link_libraries(bullet_physics INTERFACE ${BULLET_LIBRARIES})

add_program(piles piles LIBRARIES
  proofstone_simulation proofstone_photography proofstone_engine bullet_physics embree PNG::PNG JPEG::JPEG Threads::Threads)
if(TARGET test_framework)
  add_test_program(piles)
endif()
