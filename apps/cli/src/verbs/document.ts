export { answerText as document } from "@stayput/job";
