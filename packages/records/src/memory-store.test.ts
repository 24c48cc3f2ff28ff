import { memoryStore } from "./memory-store.ts";
import { storeContract } from "./test-support/store-contract.ts";

storeContract("memory store", async () => memoryStore());
