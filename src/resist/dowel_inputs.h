/* SPDX-License-Identifier: MIT */
/* What the symbols of the yield equations stand for: inputs of their steps, NDS-2018 Table 12.3.1A
   and AWC Technical Report 12. Private to this room. */
#ifndef RP_RESIST_DOWEL_INPUTS_H
#define RP_RESIST_DOWEL_INPUTS_H

#define IN_D { "D", UNIT_IN, "diameter that yields: root of a thread" }
#define IN_LM { "lm", UNIT_IN, "bearing length in the main member" }
#define IN_LS { "ls", UNIT_IN, "bearing length in the side member" }
#define IN_FEM { "Fem", UNIT_PSI, "dowel bearing strength of the main member" }
#define IN_FES { "Fes", UNIT_PSI, "dowel bearing strength of the side member" }
#define IN_FYB { "Fyb", UNIT_PSI, "bending yield strength of the fastener" }
#define IN_RD { "Rd", UNIT_NONE, "reduction term" }
#define IN_G { "g", UNIT_IN, "gap between the members" }

#endif
