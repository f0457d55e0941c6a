// simulate FOLDER: writes simulation.md, the handbook's page of the simulated piles, into a folder.
#include <cstdio>
#include <fstream>
#include <string>

#include "simulation/simulation_page.h"

int main(int count, char** words) {
  if (count != 2) {
    std::fputs("simulate FOLDER\n", stderr);
    return 2;
  }
  std::ofstream page(std::string(words[1]) + "/simulation.md", std::ios::binary);
  page << proofstone::simulation_page(proofstone::run_simulation());
  page.close();
  if (page) return 0;
  std::fprintf(stderr, "simulation.md could not be written in %s.\n", words[1]);
  return 1;
}
