#include "server/pages_server.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>
#include <thread>
#include <utility>
#include <vector>

namespace proofstone {
namespace {

namespace fs = std::filesystem;

void write_file(const fs::path& path, const std::string& text) { std::ofstream(path) << text; }

// A server on a free port of the loopback address, over a small folder of its own.
class PagesServer : public testing::Test {
 protected:
  void SetUp() override {
    std::string name = (fs::temp_directory_path() / "proofstone-pages-XXXXXX").string();
    ASSERT_NE(mkdtemp(name.data()), nullptr);
    root_ = name;
    fs::create_directories(root_ / "pages/engine");
    fs::create_directories(root_ / "examples/bend");
    write_file(root_ / "pages/index.html", "<p>screens</p>");
    write_file(root_ / "pages/engine/engine.wasm", "wasm");
    write_file(root_ / "pages/engine/outline-network.weights", "weights");
    write_file(root_ / "pages/app.js", "1");
    write_file(root_ / "examples/bend/site.json", "{}");
    write_file(root_ / "examples/bend/section.csv", "a,b");
    write_file(root_ / "secret.txt", "secret");
    ASSERT_EQ(serve_folders(server_, {(root_ / "pages").string(), (root_ / "examples").string()}),
              "");
    const Listening listening = take_port(server_, "127.0.0.1", 0, true);
    ASSERT_EQ(listening.problem, "");
    port_ = listening.port;
    thread_ = std::thread([this] { server_.listen_after_bind(); });
    while (!server_.is_running()) {
      std::this_thread::yield();
    }
  }

  void TearDown() override {
    server_.stop();
    if (thread_.joinable()) {
      thread_.join();
    }
    fs::remove_all(root_);
  }

  httplib::Result get(const std::string& path) {
    return httplib::Client("127.0.0.1", port_).Get(path.c_str());
  }

  fs::path root_;
  httplib::Server server_;
  int port_ = 0;
  std::thread thread_;
};

TEST_F(PagesServer, FilesCarryTheirMediaType) {
  const std::vector<std::pair<std::string, std::string>> expected{
      {"/", "text/html; charset=utf-8"},
      {"/app.js", "application/javascript; charset=utf-8"},
      {"/engine/engine.wasm", "application/wasm"},
      {"/engine/outline-network.weights", "application/octet-stream"},
      {"/examples/bend/site.json", "application/json; charset=utf-8"},
      {"/examples/bend/section.csv", "text/csv; charset=utf-8"}};
  for (const auto& [path, type] : expected) {
    const httplib::Result answer = get(path);
    ASSERT_TRUE(answer) << path;
    EXPECT_EQ(answer->status, 200) << path;
    EXPECT_EQ(answer->get_header_value("Content-Type"), type) << path;
  }
}

// A browser of the same machine waits longer for the compressing than for the bytes.
TEST_F(PagesServer, ScriptsAndDataGoOutAsTheyAre) {
  for (const char* path : {"/app.js", "/examples/bend/site.json"}) {
    const httplib::Result answer =
        httplib::Client("127.0.0.1", port_)
            .Get(path, httplib::Headers{{"Accept-Encoding", "gzip, br"}});
    ASSERT_TRUE(answer) << path;
    EXPECT_FALSE(answer->has_header("Content-Encoding")) << path;
  }
}

TEST_F(PagesServer, EveryAnswerLimitsWhatThePageMayLoad) {
  for (const char* path : {"/", "/app.js", "/nowhere"}) {
    const httplib::Result answer = get(path);
    ASSERT_TRUE(answer) << path;
    const std::string policy = answer->get_header_value("Content-Security-Policy");
    EXPECT_NE(policy.find("script-src 'self' 'wasm-unsafe-eval';"), std::string::npos) << path;
    EXPECT_NE(policy.find("worker-src 'self'"), std::string::npos) << path;
    EXPECT_EQ(policy.find("'unsafe-eval'"), std::string::npos) << path;
    EXPECT_EQ(answer->get_header_value("X-Content-Type-Options"), "nosniff") << path;
  }
}

TEST_F(PagesServer, NothingOutsideTheFoldersIsHandedOut) {
  for (const char* path :
       {"/../secret.txt", "/%2e%2e/secret.txt", "/examples/../../secret.txt", "/..%2fsecret.txt",
        "/examples/%2e%2e%2f%2e%2e%2fsecret.txt", "/engine/../../secret.txt", "/nowhere",
        "/examples/bend/", "/..\\secret.txt", "/examples/bend/site.json%00.txt"}) {
    const httplib::Result answer = get(path);
    ASSERT_TRUE(answer) << path;
    EXPECT_GE(answer->status, 400) << path;
    EXPECT_EQ(answer->body.find("secret"), std::string::npos) << path;
  }
}

TEST_F(PagesServer, OnlyReadingIsAllowed) {
  httplib::Client client("127.0.0.1", port_);
  for (const httplib::Result& answer :
       {client.Post("/index.html", "x", "text/plain"), client.Put("/index.html", "x", "text/plain"),
        client.Delete("/index.html")}) {
    ASSERT_TRUE(answer);
    EXPECT_EQ(answer->status, 405);
    EXPECT_EQ(answer->get_header_value("Allow"), "GET, HEAD");
  }
  EXPECT_EQ(get("/")->body, "<p>screens</p>");
}

TEST_F(PagesServer, ABusyPortIsSaidOrReplaced) {
  httplib::Server second;
  ASSERT_EQ(serve_folders(second, {(root_ / "pages").string(), (root_ / "examples").string()}), "");
  const Listening refused = take_port(second, "127.0.0.1", port_, false);
  EXPECT_EQ(refused.port, 0);
  EXPECT_NE(refused.problem.find("Port " + std::to_string(port_)), std::string::npos)
      << refused.problem;
  const Listening replaced = take_port(second, "127.0.0.1", port_, true);
  EXPECT_EQ(replaced.problem, "");
  EXPECT_NE(replaced.port, port_);
  EXPECT_GT(replaced.port, 0);
}

TEST(ServedFoldersTest, AMissingFolderIsNamed) {
  httplib::Server server;
  EXPECT_EQ(serve_folders(server, {"/no/such/pages", "/"}),
            "The folder of the screens, /no/such/pages, does not exist; build them first.");
  EXPECT_EQ(serve_folders(server, {"/", "/no/such/examples"}),
            "The folder of the examples, /no/such/examples, does not exist.");
}

}  // namespace
}  // namespace proofstone
