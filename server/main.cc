// The local server: hands out the screens; the engine runs in the browser.
#include <cstdio>
#include <string>
#include <vector>

#include "server/pages_server.h"
#include "server/server_options.h"

namespace {

int fail(const std::string& sentence) {
  std::fprintf(stderr, "%s\n", sentence.c_str());
  return 2;
}

}  // namespace

int main(int argc, char** argv) {
  const std::vector<std::string> arguments(argv + 1, argv + argc);
  const proofstone::ParsedServerOptions parsed = proofstone::parse_server_options(arguments);
  if (!parsed.problem.empty()) {
    return fail(parsed.problem);
  }
  const proofstone::ServerOptions& options = parsed.options;
  if (options.help) {
    std::fputs(proofstone::server_usage, stdout);
    return 0;
  }
  httplib::Server server;
  const std::string missing = proofstone::serve_folders(server, options.folders);
  if (!missing.empty()) {
    return fail(missing);
  }
  const proofstone::Listening listening =
      proofstone::take_port(server, options.address, options.port, !options.port_was_named);
  if (!listening.problem.empty()) {
    return fail(listening.problem);
  }
  const bool six = options.address.find(':') != std::string::npos;
  const std::string host = six ? "[" + options.address + "]" : options.address;
  std::printf("Proofstone is at http://%s:%d/  (Ctrl-C stops it)\n", host.c_str(), listening.port);
  std::fflush(stdout);
  return server.listen_after_bind() ? 0
                                    : fail("The server stopped because its port was taken away.");
}
