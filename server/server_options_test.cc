#include "server/server_options.h"

#include <gtest/gtest.h>

namespace proofstone {
namespace {

TEST(ServerOptions, DefaultsStayOnThisMachine) {
  const ParsedServerOptions parsed = parse_server_options({});
  EXPECT_EQ(parsed.problem, "");
  EXPECT_EQ(parsed.options.address, "127.0.0.1");
  EXPECT_FALSE(parsed.options.port_was_named);
}

TEST(ServerOptions, EveryOptionIsRead) {
  const ParsedServerOptions parsed =
      parse_server_options({"--pages", "p", "--examples", "e", "--port", "81", "--address", "::1"});
  EXPECT_EQ(parsed.problem, "");
  EXPECT_EQ(parsed.options.folders.pages, "p");
  EXPECT_EQ(parsed.options.folders.examples, "e");
  EXPECT_EQ(parsed.options.port, 81);
  EXPECT_TRUE(parsed.options.port_was_named);
  EXPECT_EQ(parsed.options.address, "::1");
}

TEST(ServerOptions, WrongOnesAreNamed) {
  EXPECT_EQ(parse_server_options({"--colour"}).problem,
            "Unknown option --colour; --help lists the options.");
  EXPECT_EQ(parse_server_options({"--port"}).problem, "Option --port needs a value after it.");
  EXPECT_EQ(parse_server_options({"--pages", ""}).problem,
            "Option --pages needs a value after it.");
  for (const char* port : {"-1", "65536", "99999999999", "80x", " 80", "1e3", "0x50"}) {
    EXPECT_EQ(parse_server_options({"--port", port}).problem,
              "--port " + std::string(port) + " is not a port; a whole number from 0 to 65535 is.");
  }
}

}  // namespace
}  // namespace proofstone
