#pragma once

// cpp-httplib as Debian compiles it: its classes change their layout with these three marks, so
// that a program which leaves one out would link and then crash.
#define CPPHTTPLIB_OPENSSL_SUPPORT
#define CPPHTTPLIB_ZLIB_SUPPORT
#define CPPHTTPLIB_BROTLI_SUPPORT
#include <httplib.h>
